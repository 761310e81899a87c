/**
 * Brood disease: what to look for, when to stop, what to leave alone. Plain words; the inspector and the law decide.
 * Lengths of the thread differ between sources (10-30 mm; 25 mm or more), so none is asked for.
 */
export const DiseaseGuide = ({ inspector, open }: { inspector: string; open: boolean }) => (
  <details class="caution guide" open={open}>
    <summary>Brood disease: when to stop and call the inspector</summary>
    <p>
      <b>Stop at the first of these</b> and close the box:
    </p>
    <ul>
      <li>caps that are sunken, dark, greasy, or have ragged holes;</li>
      <li>a dead larva that draws out in a brown thread on a match;</li>
      <li>dark scale dried fast to the floor of a cell;</li>
      <li>larvae twisted, yellow or brown, “melted”, before they are capped;</li>
      <li>a foul or sour smell from the brood.</li>
    </ul>
    <p>
      <b>Then</b>
    </p>
    <ol>
      <li>Close it up, entrance narrow: robbers carry it to the next box.</li>
      <li>
        Move nothing, unite nothing, give nothing from it, not even empty comb. This book locks all three.
      </li>
      <li>
        Scrape and scorch the hive tool, wash hands, change gloves. End the round here, or go on with clean
        tools.
      </li>
      <li>
        Call the apiary inspector{inspector === '' ? '' : ': '}
        {inspector === '' ? null : <b>{inspector}</b>}. In most places you have to, and within days.
      </li>
      <li>Record the visit with “brood disease suspected”.</li>
    </ol>
    <p>
      <b>Leave to them</b> whether to sample, to burn, or to treat. Antibiotics for it are against the law in
      many places, and hide it where they are not.
    </p>
    <p>
      <b>What does not clear it</b>: no thread on the match (early cells and dry ones draw none), or a later
      clean look. About one colony in five that carries American foulbrood shows it within a month, half
      within two (afb.org.nz). Where it was suspected, go on looking for half a year.
    </p>
    <p>
      <b>Likely something else</b>: hard white or grey mummies (chalkbrood), raised caps over drones, a few
      chilled larvae at the edge after a cold night. Note it all the same.
    </p>
  </details>
)

/** About treating mites, wherever it comes up. */
export const TreatmentNote = () => (
  <p class="fine">
    The label registered where you are is the law: it says how much, at what temperature, with what on, and
    whether honey may be taken. Respirator made for the vapour, acid-proof gloves, goggles, long sleeves;
    nobody downwind. Wash again 10 to 14 days after.
  </p>
)
