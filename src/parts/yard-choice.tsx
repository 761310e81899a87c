import { useWords } from '../forms/index.ts'

/** One yard, or all of them: for pages that show a choice of boxes. */
export const YardChoice = ({ yard, yards }: { yard: string | null; yards: readonly string[] }) => {
  const { parts, round } = useWords()
  return (
    <label>
      {parts.yard}
      <select name="yard">
        <option value="">{round.allYards}</option>
        {yards.map((y) => (
          <option value={y} selected={y === yard}>
            {y}
          </option>
        ))}
      </select>
    </label>
  )
}
