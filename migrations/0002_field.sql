-- The calendar feed: addresses, and what was last said of each event. Entries by day, for the round.
-- STRICT and WITHOUT ROWID by hand, as README.md in this folder says.
CREATE TABLE `calendar_event` (
	`shows` text NOT NULL,
	`uid` text NOT NULL,
	`colony` text NOT NULL,
	`content` text NOT NULL,
	`sequence` integer NOT NULL,
	`changed_at` text NOT NULL,
	`cancelled_at` text,
	PRIMARY KEY(`shows`, `uid`)
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE TABLE `calendar_feed` (
	`digest` text PRIMARY KEY NOT NULL,
	`person` text NOT NULL,
	`shows` text NOT NULL,
	`yard` text,
	`created_at` text NOT NULL,
	`fetched_at` text,
	`revoked_at` text,
	FOREIGN KEY (`person`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "calendar_feed_shows" CHECK("calendar_feed"."shows" IN ('best-day', 'window'))
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE INDEX `calendar_feed_by_person` ON `calendar_feed` (`person`);--> statement-breakpoint
CREATE INDEX `entry_by_day` ON `entry` (`on_day`,`kind`);
