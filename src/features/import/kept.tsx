/** What the steps of taking in a spreadsheet share: the form that carries everything from page to page, and its steps. */

import type { Child } from 'hono/jsx'
import { Crumb, type Frame, Layout } from '../../parts/index.ts'

export const IMPORT = '/data/colonies'

export interface StepProps {
  frame: Frame
  /** The sheet's text and everything said of it so far. */
  kept: [name: string, value: string][]
  source: string
}

const STEPS = ['Columns', 'Words and units', 'Preview'] as const
export type Step = (typeof STEPS)[number]

export const StepPage = (p: { of: StepProps; step: Step; title: string; children?: Child }) => (
  <Layout frame={p.of.frame} title={p.title} ways={false}>
    <Crumb to={IMPORT}>Colonies in and out</Crumb>
    <h1>{p.title}</h1>
    <ol class="steps" aria-label="Steps">
      {STEPS.map((step) => (
        <li aria-current={step === p.step ? 'step' : undefined}>{step}</li>
      ))}
    </ol>
    <p class="soft">{p.of.source}</p>
    {p.children}
  </Layout>
)

/** The form of a step. Nothing is kept on the server between steps: it is all in here. */
export const StepForm = ({
  of,
  shown,
  children,
}: {
  of: StepProps
  shown: (name: string) => boolean
  children?: Child
}) => (
  <form method="post" action={IMPORT} enctype="multipart/form-data" class="import-form">
    {of.kept
      .filter(([name]) => !shown(name))
      .map(([name, value]) => (
        <input type="hidden" name={name} value={value} />
      ))}
    {children}
  </form>
)

/** A button that leads to a step. */
export const Go = (p: { to: string; main?: boolean; children?: Child }) => (
  <button class={p.main ? 'button button-do' : 'button'} type="submit" name="go" value={p.to}>
    {p.children}
  </button>
)

/** Sentences that are wrong with a step. */
export const Wrong = ({ heading, problems }: { heading: string; problems: string[] }) =>
  problems.length === 0 ? null : (
    <div class="notice notice-late" role="alert" tabindex={-1} id="problems">
      <h2>{heading}</h2>
      <ul class="problem-list">
        {problems.map((text) => (
          <li>{text}</li>
        ))}
      </ul>
    </div>
  )
