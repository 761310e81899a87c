/** `resettle doctor`: is everything in order around the book? A line each, what is wrong first said, then what to do. */
import { accessSync, constants, existsSync, statfsSync, statSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { outsideFrom } from '../../app/node.ts'
import { hookRulesFrom, mailerFrom } from '../../features/messages/node.ts'
import {
  type Backup,
  backupFolder,
  dataFile,
  isServed,
  listBackups,
  lossAgainst,
  lossWords,
  openConnection,
} from '../../store/node.ts'
import { machineZone } from '../services.ts'
import { version } from '../version.ts'
import { warningsFor } from './serve.ts'
import { saying } from './terminal.ts'

/** `good`: in order. `look`: works, but see to it. `bad`: does not work. */
export interface Finding {
  state: 'good' | 'look' | 'bad'
  what: string
}

const good = (what: string): Finding => ({ state: 'good', what })
const look = (what: string): Finding => ({ state: 'look', what })
const bad = (what: string): Finding => ({ state: 'bad', what })

/** Bytes that should be free: room for a week of backups of an ordinary yard, and for photos (judgement). */
const ROOM = 500 * 1024 * 1024
const HOUR = 3_600_000
/** Hours after which a daily backup is missing. */
const LATE_HOURS = 36
/** Milliseconds to wait for the yard's own address. */
const PATIENCE_MS = 8000

/** Exit code 0: nothing is broken. 1: something is. 2: it could not be asked. */
export const run = (args: string[]): Promise<number> =>
  saying('doctor', async () => {
    parseArgs({ args, options: {} })
    const findings = await examined(process.env, new Date())
    for (const { state, what } of findings) process.stdout.write(`${state.padEnd(5)} ${what}\n`)
    return findings.some((f) => f.state === 'bad') ? 1 : 0
  })

/** Everything there is to say. Changes nothing; asks nobody but the yard's own address. */
export async function examined(env: NodeJS.ProcessEnv, now: Date): Promise<Finding[]> {
  const file = dataFile({ env })
  return [
    good(`Resettle ${version()}, Node ${process.version}`),
    ...dataFindings(file),
    ...(existsSync(file)
      ? [...bookFindings(file, now), ...backupFindings(listBackups(backupFolder(file)), now)]
      : []),
    ...settingFindings(env),
    ...(await outsideFindings(env)),
  ]
}

function dataFindings(file: string): Finding[] {
  if (!existsSync(file))
    return [
      look(
        `There is no book at ${file} yet: "resettle serve" makes one. If there should be one, set RESETTLE_DATA.`,
      ),
    ]
  const { bavail, bsize } = statfsSync(file)
  const free = bavail * bsize
  const room = `${Math.floor(free / 1024 / 1024)} MB are free`
  return [
    canWrite(file)
      ? good(
          `The book is ${file}, ${Math.ceil(statSync(file).size / 1024)} kB; ${isServed(file) ? 'a server has it open' : 'no server has it open'}`,
        )
      : bad(
          `${file} cannot be written by this account: run the server as its owner, or give it the folder (chown).`,
        ),
    free >= ROOM
      ? good(`${room} on its disk`)
      : bad(`${room} on its disk: make room, or backups and photos will fail.`),
  ]
}

function canWrite(file: string): boolean {
  try {
    accessSync(file, constants.W_OK)
    return true
  } catch {
    return false
  }
}

function bookFindings(file: string, now: Date): Finding[] {
  const { raw } = openConnection(file, { migrate: false })
  try {
    const last = raw.prepare('SELECT max(recorded_at) FROM entry').pluck().get() as string | null
    const ahead = last !== null && Date.parse(last) > now.getTime() + HOUR
    const loss = lossAgainst(raw, backupFolder(file))
    return [
      ahead
        ? bad(
            `The clock says ${now.toISOString()}, but something was recorded at ${last}: set the clock, and let the machine keep it (timedatectl set-ntp true).`,
          )
        : good(`The clock says ${now.toISOString()}, in ${machineZone()}`),
      loss === null
        ? good('Every entry of the backups is in the book; "resettle verify" looks closer')
        : bad(`The book is not complete: ${lossWords(loss)} "resettle verify" says how to go back.`),
    ]
  } finally {
    raw.close()
  }
}

function backupFindings([newest, ...others]: Backup[], now: Date): Finding[] {
  if (newest === undefined) return [bad('There is no backup: "resettle backup" takes one.')]
  const hours = Math.floor((now.getTime() - Date.parse(newest.at)) / HOUR)
  const many = `${others.length + 1} ${others.length === 0 ? 'backup' : 'backups'} beside the book`
  if (hours < -1)
    return [
      bad(
        `The newest backup is of ${newest.at}, which is in the future: the clock was wrong then, or is now.`,
      ),
    ]
  return [
    hours <= LATE_HOURS
      ? good(`${many}, the newest of ${newest.at}; copies on another machine are yours to make`)
      : bad(
          `${many}, the newest ${Math.floor(hours / 24)} days old: there should be one every day while the server runs.`,
        ),
  ]
}

/** What the environment says, read as the server reads it. */
function settingFindings(env: NodeJS.ProcessEnv): Finding[] {
  const read = (what: string, work: () => Finding): Finding => {
    try {
      return work()
    } catch (error) {
      return bad(error instanceof Error ? error.message : `${what} cannot be read`)
    }
  }
  return [
    read('RESETTLE_SMTP_URL', () =>
      mailerFrom(env) === null
        ? look(
            'No e-mail is sent: set RESETTLE_SMTP_URL and RESETTLE_SMTP_FROM if mornings should be mailed.',
          )
        : good('E-mail is set up; "Messages" in the pages sends one to try'),
    ),
    read('RESETTLE_WEBHOOK_INSIDE', () => {
      hookRulesFrom(env)
      return good(
        env.RESETTLE_WEBHOOK_INSIDE
          ? `Webhooks may go inside to: ${env.RESETTLE_WEBHOOK_INSIDE}`
          : 'Webhooks go to public https addresses only',
      )
    }),
  ]
}

/** The yard's address as a phone sees it: its certificate, its answer, and whether the proxy is believed. */
async function outsideFindings(env: NodeJS.ProcessEnv): Promise<Finding[]> {
  try {
    const outside = outsideFrom(env)
    const warnings = warningsFor(env.RESETTLE_HOST ?? '127.0.0.1', outside).map(look)
    if (outside.url === null)
      return [
        ...warnings,
        look(
          'RESETTLE_URL is not set: phones keep pages for the yard only from an https address (or this machine).',
        ),
      ]
    return [...warnings, await asked(outside.url)]
  } catch (error) {
    return [bad(error instanceof Error ? error.message : String(error))]
  }
}

async function asked(url: string): Promise<Finding> {
  try {
    const answer = await fetch(`${url}/sign-in`, {
      redirect: 'manual',
      signal: AbortSignal.timeout(PATIENCE_MS),
    })
    if (!url.startsWith('https:'))
      return look(
        `${url} answers, without TLS: phones will not keep pages for the round. Put a TLS proxy before it.`,
      )
    if (answer.status >= 500)
      return bad(
        `${url} answers ${answer.status}: the proxy does not find the server. Is it running, and on which port?`,
      )
    return answer.headers.get('strict-transport-security') === null
      ? bad(
          `${url} answers, but not as this server does over TLS: does the proxy lead here, and is RESETTLE_URL set for the server too?`,
        )
      : good(`${url} answers over TLS, with a certificate that is believed`)
  } catch (error) {
    const cause =
      error instanceof Error && error.cause instanceof Error && 'code' in error.cause
        ? String(error.cause.code)
        : ''
    return bad(
      `${url} cannot be reached from here (${cause || 'no answer'}): check the name, the proxy, and its certificate.`,
    )
  }
}
