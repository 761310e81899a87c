/** A signature as it is kept, and the text that was signed. */
import { blocksOf, FIELD, type Signature } from '../../records/index.ts'
import { dayWords } from '../../words/index.ts'

export const SignatureView = ({ signature: s, today }: { signature: Signature; today: string }) => (
  <figure class="signature">
    {s.path === undefined ? null : (
      <svg viewBox={`0 0 ${FIELD.width} ${FIELD.height}`} role="img" aria-label={`Drawn name of ${s.name}`}>
        <path d={s.path} />
      </svg>
    )}
    <figcaption>
      Signed by {s.name}
      {s.how === 'paper' ? ' on paper' : ''}, <time datetime={s.on}>{dayWords(s.on, today)}</time>
    </figcaption>
  </figure>
)

/** The agreement laid out. */
export const Terms = ({ text }: { text: string }) => (
  <div class="terms">
    {blocksOf(text).map((b) =>
      b.is === 'list' ? (
        <ul>
          {b.items.map((item) => (
            <li>{item}</li>
          ))}
        </ul>
      ) : b.is === 'heading' ? (
        <h2>{b.text}</h2>
      ) : (
        <p>{b.text}</p>
      ),
    )}
  </div>
)
