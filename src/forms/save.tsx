import type { PropsWithChildren } from 'hono/jsx'

/** The button at the end of a form that hands it in. `quiet`: it is not what the page is for. */
export const Save = ({ quiet = false, children }: PropsWithChildren<{ quiet?: boolean }>) => (
  <div class="save">
    <button class={quiet ? 'button' : 'button button-do'} type="submit">
      {children}
    </button>
  </div>
)
