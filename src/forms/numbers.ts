/** Numbers as people type them: '1.5', '1,5', '½', '1½', '1 1/2'. */

const PARTS: Record<string, number> = { '¼': 0.25, '½': 0.5, '¾': 0.75 }

/** The number typed, or null when it is none. Example: numberTyped('1½') = 1.5; numberTyped('two') = null. */
export function numberTyped(text: string): number | null {
  const t = text.trim()
  const sign = t.match(/^([-−+]?)\s*(.*)$/)
  const body = sign?.[2] ?? ''
  const size = sizeTyped(body)
  if (size === null) return null
  return sign?.[1] === '-' || sign?.[1] === '−' ? 0 - size : size
}

function sizeTyped(t: string): number | null {
  if (/^(\d{1,9}([.,]\d{0,9})?|[.,]\d{1,9})$/.test(t)) return Number(t.replace(',', '.'))
  const glyph = t.match(/^(\d{0,4})\s*([¼½¾])$/)
  if (glyph) return Number(glyph[1] || 0) + (PARTS[glyph[2] ?? ''] ?? 0)
  const ratio = t.match(/^(?:(\d{1,4})\s+)?(\d{1,4})\/(\d{1,4})$/)
  if (ratio && Number(ratio[3]) !== 0) return Number(ratio[1] ?? 0) + Number(ratio[2]) / Number(ratio[3])
  return null
}
