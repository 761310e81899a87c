-- Which entries came with which spreadsheet.
-- STRICT and WITHOUT ROWID by hand, as README.md in this folder says.
CREATE TABLE `colony_import` (
	`id` text PRIMARY KEY NOT NULL,
	`taken_at` text NOT NULL,
	`taken_by` text NOT NULL,
	`source` text NOT NULL,
	`colonies` integer NOT NULL
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE TABLE `colony_import_entry` (
	`entry` text PRIMARY KEY NOT NULL,
	`import` text NOT NULL,
	FOREIGN KEY (`entry`) REFERENCES `entry`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`import`) REFERENCES `colony_import`(`id`) ON UPDATE no action ON DELETE no action
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE INDEX `colony_import_entry_by_import` ON `colony_import_entry` (`import`);
