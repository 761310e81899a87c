/**
 * Names that are all text and none the other: the compiler refuses a tag where a colony's id is asked for, and a day where
 * either is. Text that is not known yet to be any of them, such as what was typed or came in an entry, may become each.
 */
export type Named<N extends string> = string & { readonly is?: N }

/** The id of a colony's first intake entry. */
export type ColonyId = Named<'colony'>
/** UUID of an entry in the journal. */
export type EntryId = Named<'entry'>
/** What stands on the box; one colony at a time has it. */
export type Tag = Named<'tag'>
