import { describe, expect, it } from 'vitest'
import { ensureChromium, findChromium, type Machine, NoChromium } from './chromium.ts'

/** A machine on which only the named files can be run. */
const machine = (programs: string[], more: Partial<Machine> = {}): Machine => ({
  env: { PATH: '/usr/local/bin:/usr/bin' },
  runnable: (file) => programs.includes(file),
  playwrightCopy: '/home/wren/.cache/ms-playwright/chromium-1/chrome',
  root: false,
  run: () => {
    throw new Error('nothing should be run')
  },
  ...more,
})

describe('finding a Chromium', () => {
  it('takes CHROMIUM_PATH before anything else', () => {
    const m = machine(['/opt/own/chromium', '/usr/bin/chromium'], {
      env: { PATH: '/usr/bin', CHROMIUM_PATH: '/opt/own/chromium' },
    })
    expect(findChromium(m)).toBe('/opt/own/chromium')
  })

  it('says so when CHROMIUM_PATH cannot be run, rather than taking another', () => {
    const m = machine(['/usr/bin/chromium'], { env: { PATH: '/usr/bin', CHROMIUM_PATH: '/gone' } })
    expect(() => findChromium(m)).toThrow(/CHROMIUM_PATH is \/gone/)
  })

  it('treats an empty CHROMIUM_PATH as not set', () => {
    expect(
      findChromium(machine(['/usr/bin/chromium'], { env: { PATH: '/usr/bin', CHROMIUM_PATH: '' } })),
    ).toBe('/usr/bin/chromium')
  })

  it.each([
    ['/usr/bin/chromium'],
    ['/usr/local/bin/chromium-browser'],
    ['/usr/bin/google-chrome-stable'],
    ['/usr/bin/google-chrome'],
  ])('finds %s on PATH', (file) => {
    expect(findChromium(machine([file]))).toBe(file)
  })

  it('takes the one without windows before the whole browser', () => {
    const shell = '/usr/bin/chromium-headless-shell'
    expect(findChromium(machine(['/usr/bin/chromium', shell]))).toBe(shell)
  })

  it('takes the whole browser where it is asked for, even when the other is named', () => {
    const shell = '/usr/bin/chromium-headless-shell'
    const env = { PATH: '/usr/bin', CHROMIUM_PATH: shell }
    expect(findChromium(machine(['/usr/bin/chromium', shell]), true)).toBe('/usr/bin/chromium')
    expect(findChromium(machine(['/usr/bin/chromium', shell], { env }), true)).toBe('/usr/bin/chromium')
  })

  it('falls back on the copy Playwright keeps', () => {
    const copy = '/home/wren/.cache/ms-playwright/chromium-1/chrome'
    expect(findChromium(machine([copy]))).toBe(copy)
  })

  it('finds nothing on an empty PATH', () => {
    expect(findChromium(machine(['/usr/bin/chromium'], { env: {} }))).toBeNull()
  })
})

describe('making sure of a Chromium', () => {
  it('installs nothing when there is one', () => {
    expect(ensureChromium(machine(['/usr/bin/chromium', '/usr/bin/apt-get'], { root: true }))).toBe(
      '/usr/bin/chromium',
    )
  })

  it('installs Debian’s as root, and finds it then', () => {
    const programs = ['/usr/bin/apt-get']
    const ran: string[] = []
    const m = machine(programs, {
      root: true,
      run: (command, args) => {
        ran.push([command, ...args].join(' '))
        if (args.includes('install')) programs.push('/usr/bin/chromium')
      },
    })
    expect(ensureChromium(m)).toBe('/usr/bin/chromium')
    expect(ran).toEqual([
      'apt-get update',
      'apt-get install -y chromium',
      'apt-get install -y chromium-headless-shell',
    ])
  })

  it('gives the exact command when apt is there but we are not root', () => {
    expect(() => ensureChromium(machine(['/usr/bin/apt-get']))).toThrow(
      'sudo apt-get update && sudo apt-get install -y chromium',
    )
  })

  it('gives the exact command where there is no apt', () => {
    expect(() => ensureChromium(machine([], { root: true }))).toThrow('npx playwright-core install chromium')
  })

  it('gives the exact command when apt fails', () => {
    const m = machine(['/usr/bin/apt-get'], {
      root: true,
      run: () => {
        throw new Error('no network')
      },
    })
    expect(() => ensureChromium(m)).toThrow(NoChromium)
    expect(() => ensureChromium(m)).toThrow(/no network[\s\S]*apt-get update && apt-get install -y chromium/)
  })

  it('fails when apt ends well but no browser appeared', () => {
    expect(() => ensureChromium(machine(['/usr/bin/apt-get'], { root: true, run: () => {} }))).toThrow(
      NoChromium,
    )
  })
})
