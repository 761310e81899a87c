import type { Child, PropsWithChildren } from 'hono/jsx'

interface NumbersProps {
  caption?: Child
  /** What each column holds; null over what each row is of, where that needs no word. */
  heads?: readonly Child[]
  class?: string
}

/** A table of numbers; each of its rows begins with what it is of. */
export const Numbers = ({ caption, heads = [], children, ...rest }: PropsWithChildren<NumbersProps>) => (
  <table class={rest.class === undefined ? 'numbers' : `numbers ${rest.class}`}>
    {caption === undefined ? null : <caption>{caption}</caption>}
    {heads.length === 0 ? null : (
      <thead>
        <tr>{heads.map((head) => (head === null ? <td /> : <th scope="col">{head}</th>))}</tr>
      </thead>
    )}
    <tbody>{children}</tbody>
  </table>
)
