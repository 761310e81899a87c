/** What nobody should find out on the road: said where a colony is about to leave. */
export const BeforeItLeaves = ({ said }: { said: readonly string[] }) =>
  said.length === 0 ? null : (
    <div class="notice notice-late">
      <p>
        <b>Before it leaves</b>
      </p>
      <ul>
        {said.map((s) => (
          <li>{s}</li>
        ))}
      </ul>
    </div>
  )
