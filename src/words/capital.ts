/** Begins with a capital letter. Example: capital('year of intake') = 'Year of intake'. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
