/** How many letters each note of a sheet takes: room for those of two people whose sheets crossed (merge-sheets.ts), twice what a form does. */
export const LETTERS = {
  'job.told': 2100,
  'job.wayIn': 1100,
  'site.where': 700,
  'site.surface': 300,
  'site.behindNote': 1100,
  'site.foundNote': 1100,
  'site.bystandersNote': 700,
  'site.sprayedNote': 700,
  'site.entrance': 500,
  'site.otherEntrances': 700,
} as const
