/** The secret part of an address, and its digest, on the server and in a phone alike. */

const hex = (bytes: Uint8Array): string => Array.from(bytes, (b) => b.toString(16).padStart(2, '0')).join('')

/** SHA-256 of a text, in hex. */
export const sha256 = async (text: string): Promise<string> =>
  hex(new Uint8Array(await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text))))

/** 256 bits, in hex: whoever has the address may read what is there. */
export const newSecret = (): string => hex(crypto.getRandomValues(new Uint8Array(32)))
