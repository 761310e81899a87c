-- Entries that were refused, kept for a beekeeper; calendars with one entry a yard and day.
-- STRICT by hand, as README.md in this folder says; foreign keys are off while migrations run.
CREATE TABLE `refused_entry` (
	`id` text PRIMARY KEY NOT NULL,
	`person` text NOT NULL,
	`sent_by` text NOT NULL,
	`received_at` text NOT NULL,
	`tag` text NOT NULL,
	`payload` text NOT NULL,
	`problems` text NOT NULL,
	`settled_at` text,
	`settled_by` text,
	CONSTRAINT "refused_entry_payload" CHECK(json_valid("refused_entry"."payload") AND json_valid("refused_entry"."problems"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `refused_entry_open` ON `refused_entry` (`received_at`) WHERE settled_at IS NULL;--> statement-breakpoint
CREATE TABLE `__new_calendar_feed` (
	`digest` text PRIMARY KEY NOT NULL,
	`person` text NOT NULL,
	`shows` text NOT NULL,
	`yard` text,
	`created_at` text NOT NULL,
	`fetched_at` text,
	`revoked_at` text,
	FOREIGN KEY (`person`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "calendar_feed_shows" CHECK("__new_calendar_feed"."shows" IN ('yard-day', 'best-day', 'window'))
) STRICT;
--> statement-breakpoint
INSERT INTO `__new_calendar_feed`("digest", "person", "shows", "yard", "created_at", "fetched_at", "revoked_at") SELECT "digest", "person", "shows", "yard", "created_at", "fetched_at", "revoked_at" FROM `calendar_feed`;--> statement-breakpoint
DROP TABLE `calendar_feed`;--> statement-breakpoint
ALTER TABLE `__new_calendar_feed` RENAME TO `calendar_feed`;--> statement-breakpoint
CREATE INDEX `calendar_feed_by_person` ON `calendar_feed` (`person`);