/** The letter as a customer opens it, without an account: nothing on it leads into the book. */
import type { Child } from 'hono/jsx'
import { type Day, dayWords, inWordsWithYear } from '../../days.ts'
import { BarePage, type Frame } from '../../parts/index.ts'
import type { Letter } from './letter.ts'

type Built = Frame['built']

export const LetterPage = (p: { letter: Letter; words: string | null; built: Built }) => (
  <BarePage title={p.letter.title} built={p.built}>
    <LetterSheet letter={p.letter} words={p.words} level={1} />
    <p class="letter-print">
      <button class="button" type="button" id="print" hidden>
        Print
      </button>
    </p>
  </BarePage>
)

interface NothingProps {
  what: 'letter' | 'sheet'
  built: Built
  /** A sentence, when too many addresses were tried. */
  wait: string | null
}

export const NothingAtAddress = ({ what, built, wait }: NothingProps) => (
  <BarePage title={`No ${what} here`} built={built}>
    <article class="letter">
      <h1>There is no {what} at this address</h1>
      <p>It may have been mistyped, or taken back. Ask whoever gave it to you for a new one.</p>
      {wait === null ? null : <p>{wait}</p>}
    </article>
  </BarePage>
)

/** The letter itself; also in the preview, where the page has a heading of its own. */
export const LetterSheet = (p: { letter: Letter; words: string | null; level: 1 | 2 }) => {
  const { letter } = p
  return (
    <article class="letter">
      {p.level === 1 ? <h1>{letter.title}</h1> : <h2 class="letter-title">{letter.title}</h2>}
      <p class="soft">
        As of <time datetime={letter.asOf}>{inWordsWithYear(letter.asOf)}</time>
      </p>
      {p.words === null ? null : <OwnWords words={p.words} />}
      <Part level={p.level} title="How they are" sentences={letter.now} lead />
      <Part level={p.level} title="What comes next" sentences={letter.next} />
      <Part level={p.level} title="How they came" sentences={letter.came} />
      {letter.steps.length === 0 ? null : (
        <section>
          <Title level={p.level}>What has happened since</Title>
          <dl class="letter-steps">
            {daysOf(letter.steps).map(({ on, texts }) => (
              <div>
                <dt>
                  <time datetime={on}>{dayWords(on, letter.asOf)}</time>
                </dt>
                {texts.map((text) => (
                  <dd>{text}</dd>
                ))}
              </div>
            ))}
          </dl>
        </section>
      )}
      <Part level={p.level} title="The place they came from" sentences={letter.place} list />
    </article>
  )
}

const Title = ({ level, children }: { level: 1 | 2; children?: Child }) =>
  level === 1 ? <h2>{children}</h2> : <h3>{children}</h3>

const OwnWords = ({ words }: { words: string }) => (
  <div class="letter-words">
    {words
      .replaceAll('\r\n', '\n')
      .split(/\n{2,}/)
      .filter((s) => s.trim() !== '')
      .map((paragraph) => (
        <p>{paragraph}</p>
      ))}
  </div>
)

interface PartProps {
  level: 1 | 2
  title: string
  sentences: readonly string[]
  lead?: boolean
  list?: boolean
}

const Part = ({ level, title, sentences, lead, list }: PartProps) =>
  sentences.length === 0 ? null : (
    <section class={lead ? 'letter-lead' : undefined}>
      <Title level={level}>{title}</Title>
      {list ? (
        <ul>
          {sentences.map((s) => (
            <li>{s}</li>
          ))}
        </ul>
      ) : (
        <p>{sentences.join(' ')}</p>
      )}
    </section>
  )

/** Steps of one day together. */
function daysOf(steps: Letter['steps']): { on: Day; texts: string[] }[] {
  const days: { on: Day; texts: string[] }[] = []
  for (const { on, text } of steps) {
    const last = days.at(-1)
    if (last?.on === on) last.texts.push(text)
    else days.push({ on, texts: [text] })
  }
  return days
}
