import type { ReviewCsv } from './csv.ts'
import { pathIn, type ReviewProps } from './part-props.ts'

/** The ways to a chart's numbers as files. */
export const CsvLinks = ({ of, files }: { of: ReviewProps; files: Partial<Record<ReviewCsv, string>> }) => (
  <p class="buttons">
    {(Object.entries(files) as [ReviewCsv, string][]).map(([file, words]) => (
      <a class="button button-plain" href={pathIn(of, `/${file}.csv`)} download>
        {words}
      </a>
    ))}
  </p>
)
