/** The files of a version: styles, browser code, icons. Fetched once when the version is installed, then kept. */

/** What the build says of itself. */
export interface Built {
  /** Another one for every build. */
  version: string
  /** Address of every built file, by its source name. */
  files: Record<string, string>
  /** Addresses that the round needs. */
  keep: string[]
}

export interface Files {
  /** Address of a built file by its source name; null when it was not built. */
  address: (source: string) => string | null
  /** Whether it is a file of the build that never changes under its name, or one that is kept anyway. */
  holds: (path: string) => boolean
  file: (request: Request) => Promise<Response>
  fetchAll: () => Promise<void>
  /** Throws away what older versions kept. */
  dropOld: () => Promise<void>
}

const PREFIX = 'resettle-files-'

export function files({ version, files, keep }: Built): Files {
  const name = PREFIX + version
  const kept = new Set(keep)
  return {
    address: (source) => (Object.hasOwn(files, source) ? (files[source] ?? null) : null),
    holds: (path) => path.startsWith('/assets/') || kept.has(path),
    async file(request) {
      const cache = await caches.open(name)
      const found = await cache.match(request, { ignoreSearch: true })
      if (found !== undefined) return found
      const answer = await fetch(request)
      if (answer.ok && !answer.redirected) await cache.put(request, answer.clone())
      return answer
    },
    fetchAll: () => caches.open(name).then((cache) => cache.addAll(keep)),
    async dropOld() {
      const old = (await caches.keys()).filter((key) => key.startsWith(PREFIX) && key !== name)
      await Promise.all(old.map((key) => caches.delete(key)))
    },
  }
}
