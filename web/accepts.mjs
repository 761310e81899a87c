/**
 * What the worker of the phone takes for hono/accepts: the page of a phone is in the language of its account, and of a browser the
 * worker sees at most the plain header. The whole reader of Accept headers is half a kilobyte of what a phone fetches.
 */
export const accepts = (c, { header, default: otherwise, match, ...options }) => {
  const said = c.req.header(header)
  if (said === undefined) return otherwise
  const asked = said.split(',').map((part) => {
    const [type, q = '1'] = part.split(/;\s*q=/)
    return { type: type.trim(), params: {}, q: Number(q) }
  })
  return match(asked, { header, default: otherwise, ...options })
}
