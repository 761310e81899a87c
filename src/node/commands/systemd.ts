/** `resettle systemd`: a unit for this machine's service manager, on standard output, with what to do with it on stderr. */
import { userInfo } from 'node:os'
import { resolve } from 'node:path'
import { parseArgs } from 'node:util'
import { dataFolder } from '../../store/node.ts'
import { isSmall, SMALL_ALLOCATOR } from '../memory.ts'
import { saying } from './terminal.ts'

/** Settings that are carried over from the environment it is run in. SMTP's address holds a password: named, not copied. */
const CARRIED = [
  'RESETTLE_HOST',
  'RESETTLE_PORT',
  'RESETTLE_URL',
  'RESETTLE_TRUST_PROXY',
  'RESETTLE_WEBHOOK_INSIDE',
  'RESETTLE_LOG',
  'RESETTLE_MEMORY',
  'RESETTLE_SMTP_FROM',
]

interface Place {
  node: string
  program: string
  data: string
  user: string
  env: NodeJS.ProcessEnv
  /** Memory before speed (memory.ts). */
  small: boolean
}

/**
 * The unit. The server may write its data folder and nothing else; it is started again when it dies, and stopped with the
 * signal on which it finishes what it is doing. What it logs goes to the system's journal, which throws old lines away.
 */
export function unitFor({ node, program, data, user, env, small }: Place): string {
  const settings = CARRIED.flatMap((name) => {
    const value = env[name]
    return value === undefined || value === '' ? [] : [`Environment=${quoted(`${name}=${value}`)}`]
  })
  return [
    '[Unit]',
    'Description=Resettle, the book of rescued honey bee colonies',
    'After=network-online.target time-sync.target',
    'Wants=network-online.target time-sync.target',
    '',
    '[Service]',
    `User=${user}`,
    `ExecStart=${quoted(node)} ${quoted(program)} serve`,
    ...(small ? [`Environment=${SMALL_ALLOCATOR}`] : []),
    `Environment=${quoted(`RESETTLE_DATA=${data}`)}`,
    ...settings,
    '# Secrets, such as RESETTLE_SMTP_URL, a line each, readable by root alone:',
    'EnvironmentFile=-/etc/resettle.env',
    'Restart=on-failure',
    'RestartSec=5',
    'TimeoutStopSec=60',
    'UMask=0077',
    'NoNewPrivileges=yes',
    'PrivateTmp=yes',
    'ProtectSystem=strict',
    'ProtectHome=read-only',
    `ReadWritePaths=${quoted(data)}`,
    '',
    '[Install]',
    'WantedBy=multi-user.target',
    '',
  ].join('\n')
}

/** As systemd.syntax(7) and systemd.service(5) read it: quotes and backslashes escaped, per cent and dollar doubled. */
const quoted = (text: string): string =>
  `"${text.replaceAll('\\', '\\\\').replaceAll('"', '\\"').replaceAll('%', '%%').replaceAll('$', '$$$$')}"`

/** Exit code 0; 2 for arguments it does not know. */
export const run = (args: string[]): Promise<number> =>
  saying('systemd', () => {
    parseArgs({ args, options: {} })
    const program = resolve(process.argv[1] ?? '')
    const place = {
      node: process.execPath,
      program,
      data: dataFolder(),
      user: userInfo().username,
      env: process.env,
      small: isSmall(process.env),
    }
    process.stdout.write(unitFor(place))
    process.stderr.write(
      'To use it: resettle systemd | sudo tee /etc/systemd/system/resettle.service, then sudo systemctl daemon-reload and sudo systemctl enable --now resettle.\nIts log: journalctl -u resettle. How much of it is kept is set by SystemMaxUse in journald.conf.\n',
    )
    return 0
  })
