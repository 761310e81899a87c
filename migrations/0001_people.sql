-- Accounts, sessions and invitations; and where colonies were removed, kept apart from the journal.
-- STRICT and WITHOUT ROWID by hand, as README.md in this folder says.
CREATE TABLE `site_contact` (
	`entry` text PRIMARY KEY NOT NULL,
	`site` text NOT NULL,
	FOREIGN KEY (`entry`) REFERENCES `entry`(`id`) ON UPDATE no action ON DELETE no action
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE TABLE `invite` (
	`digest` text PRIMARY KEY NOT NULL,
	`person` text NOT NULL,
	`created_at` text NOT NULL,
	`created_by` text,
	`expires_at` text NOT NULL,
	`used_at` text,
	FOREIGN KEY (`person`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE INDEX `invite_by_person` ON `invite` (`person`);--> statement-breakpoint
CREATE TABLE `person` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`name_key` text NOT NULL,
	`role` text NOT NULL,
	`passphrase` text,
	`created_at` text NOT NULL,
	`created_by` text,
	`closed_at` text,
	CONSTRAINT "person_role" CHECK("person"."role" IN ('operator', 'beekeeper', 'helper'))
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE UNIQUE INDEX `person_name_key_unique` ON `person` (`name_key`);--> statement-breakpoint
CREATE TABLE `session` (
	`digest` text PRIMARY KEY NOT NULL,
	`person` text NOT NULL,
	`created_at` text NOT NULL,
	`seen_at` text NOT NULL,
	FOREIGN KEY (`person`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE INDEX `session_by_person` ON `session` (`person`);
