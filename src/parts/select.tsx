/** One of several, chosen from a list: for what is shown, not for what is written down. */
export const Select = (p: {
  name: string
  label: string
  value: string | undefined
  options: readonly (readonly [value: string, label: string])[]
  class?: string
}) => (
  <label class={p.class}>
    {p.label}
    <select name={p.name}>
      {p.options.map(([value, label]) => (
        <option value={value} selected={value === p.value}>
          {label}
        </option>
      ))}
    </select>
  </label>
)
