/** Which session the pages of a running yard are opened with. */
const sessions = new Map<string, string>()

export const keepSignedIn = (url: string, session: string): void => {
  sessions.set(url, session)
}

export const sessionAt = (url: string): string | undefined => sessions.get(url)
