/** One yard, or all of them: for pages that show a choice of boxes. */
export const YardChoice = ({ yard, yards }: { yard: string | null; yards: readonly string[] }) => (
  <label>
    Yard
    <select name="yard">
      <option value="">All yards</option>
      {yards.map((y) => (
        <option value={y} selected={y === yard}>
          {y}
        </option>
      ))}
    </select>
  </label>
)
