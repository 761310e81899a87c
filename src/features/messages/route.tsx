import { Hono } from 'hono'
import { RateLimiterMemory, RateLimiterRes } from 'rate-limiter-flexible'
import { type AppContext, type Env, keepPageLanguage, page, typedIn, viewerOf } from '../../app/index.ts'
import { type FieldProblem, one, type Typed } from '../../forms/index.ts'
import type { Words } from '../../words/index.ts'
import { DEFAULT_HOUR } from './choices.ts'
import { hookUrlProblem } from './hook-rules.ts'
import { emailAddress } from './mail.ts'
import type { MessagesDeps } from './messages.ts'
import { MessagesPage, type SentWords } from './page.tsx'
import type { SentLine } from './sent.ts'

/** Lines of what was sent that are shown. */
const SHOWN = 10
/** Messages one person may try out in an hour. */
const TRIES = { points: 6, duration: 3600 }

/** What was done, by the word in the address that comes after it. */
const DONE: Record<string, (w: Words['messages']) => string> = {
  saved: (w) => w.saved,
  secret: (w) => w.secret.renewed,
}

/** One's own morning messages. */
export function messages(deps: MessagesDeps): Hono<Env> {
  const app = new Hono<Env>()
  const { choices, sent, messenger } = deps.messages
  const tries = new RateLimiterMemory(TRIES)

  const show = (
    c: AppContext,
    typed: Typed,
    problems: FieldProblem[] = [],
    done: { words: string; well: boolean } | null = null,
  ) => {
    const mine = choices.of(viewerOf(c).id)
    return page(
      c,
      <MessagesPage
        frame={c.var.frame}
        form={{ typed, problems }}
        mails={messenger.sendsMail}
        has={{ mail: mine?.mail != null, hook: mine?.hook != null }}
        secret={mine?.secret ?? null}
        sent={sent.of(viewerOf(c).id, SHOWN).map((line) => sentWords(c, line))}
        done={done}
      />,
      problems.length === 0 ? 200 : 422,
    )
  }
  const typedNow = (c: AppContext): Typed => {
    const mine = choices.of(viewerOf(c).id)
    return {
      mail: [mine?.mail ?? ''],
      hook: [mine?.hook ?? ''],
      hour: [String(mine?.hour ?? DEFAULT_HOUR)],
    }
  }

  app.get('/account/messages', (c) => {
    const done = DONE[c.req.query('done') ?? '']
    const words = done?.(c.var.frame.words.messages)
    return show(c, typedNow(c), [], words === undefined ? null : { words, well: true })
  })

  app.post('/account/messages', async (c) => {
    const typed = await typedIn(c)
    const [mail, hook, hour] = [one(typed, 'mail'), one(typed, 'hook'), Number(one(typed, 'hour'))]
    const problems: FieldProblem[] = []
    if (mail !== '' && !emailAddress.safeParse(mail).success)
      problems.push({ field: 'mail', message: 'must be an e-mail address' })
    const wrong = hook === '' ? null : hookUrlProblem(hook, messenger.rules)
    if (wrong !== null) problems.push({ field: 'hook', message: wrong })
    if (one(typed, 'hour') === '' || !Number.isInteger(hour) || hour < 0 || hour > 23)
      problems.push({ field: 'hour', message: 'must be a full hour from 0 to 23' })
    if (problems.length > 0) return show(c, typed, problems)
    const { id } = viewerOf(c)
    // On a server that sends no e-mail the field is not shown: what was chosen before stays.
    const kept = messenger.sendsMail ? mail || null : (choices.of(id)?.mail ?? null)
    const fromDay = messenger.firstDay(hour)
    keepPageLanguage(c, deps)
    choices.set(id, { mail: kept, hook: hook || null, hour, fromDay }, deps.clock().toISOString())
    return c.redirect('/account/messages?done=saved', 303)
  })

  app.post('/account/messages/try', async (c) => {
    const viewer = viewerOf(c)
    const { messages: words } = c.var.frame.words
    const mine = choices.of(viewer.id)
    const way = one(await typedIn(c), 'way') === 'mail' ? 'mail' : 'hook'
    if (mine === null || mine[way] === null)
      return show(c, typedNow(c), [{ field: way, message: 'must be saved first' }])
    try {
      await tries.consume(viewer.id)
    } catch (refusal) {
      if (!(refusal instanceof RateLimiterRes)) throw refusal
      return show(c, typedNow(c), [], { words: words.enough, well: false })
    }
    const result = await messenger.tryOut(mine, way)
    const said = result.ok ? words.wentOut : words.didNot(words.trouble(result.words))
    return show(c, typedNow(c), [], { words: said, well: result.ok })
  })

  app.post('/account/messages/secret', (c) => {
    choices.renewSecret(viewerOf(c).id, deps.clock().toISOString())
    return c.redirect('/account/messages?done=secret', 303)
  })
  return app
}

function sentWords(c: AppContext, line: SentLine): SentWords {
  const { zone, today } = c.var.frame
  const { dates, messages: t } = c.var.frame.words
  const at = (iso: string): string => dates.instant(iso, zone, today)
  const why = t.trouble(line.trouble ?? '')
  const said = (words: string, late: boolean): SentWords => ({
    day: dates.day(line.day, today),
    way: line.way,
    words,
    late,
  })
  switch (line.state) {
    case 'sent':
      return said(t.sent(at(line.changedAt)), false)
    case 'sending':
      return said(t.sending, false)
    case 'again':
      return said(t.again(why, at(line.againAt ?? line.changedAt)), true)
    case 'given-up':
      return said(t.notSent(why), true)
  }
}
