-- Made by drizzle-kit, then finished by hand as README.md in this folder says:
-- STRICT, WITHOUT ROWID, DEFERRABLE and the triggers that keep the journal append-only.
CREATE TABLE `colony` (
	`id` text PRIMARY KEY NOT NULL,
	`tag` text NOT NULL,
	`yard` text NOT NULL,
	`stand` text,
	`removal_type` text NOT NULL,
	`queen_at_intake` text NOT NULL,
	`intake_on` text NOT NULL,
	`removed_on` text NOT NULL,
	`phase` text NOT NULL,
	`outcome` text,
	`closed_on` text,
	`as_of` text NOT NULL,
	`day` integer NOT NULL,
	`next_rule` text,
	`next_opens` text,
	`next_due` text,
	`next_closes` text,
	`action` text NOT NULL,
	`action_why` text NOT NULL,
	`to_do` integer NOT NULL,
	`plan` text NOT NULL,
	FOREIGN KEY (`id`) REFERENCES `entry`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `colony_by_tag` ON `colony` ("tag" COLLATE NOCASE);--> statement-breakpoint
CREATE INDEX `colony_in_yard` ON `colony` (`to_do`,`as_of`) WHERE closed_on IS NULL;--> statement-breakpoint
CREATE INDEX `colony_by_yard` ON `colony` (`yard`,`closed_on`);--> statement-breakpoint
CREATE TABLE `entry` (
	`seq` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`id` text NOT NULL,
	`colony` text NOT NULL,
	`kind` text NOT NULL,
	`on_day` text NOT NULL,
	`replaces` text,
	`recorded_at` text NOT NULL,
	`recorded_by` text NOT NULL,
	`payload` text NOT NULL,
	FOREIGN KEY (`replaces`) REFERENCES `entry`(`id`) ON UPDATE no action ON DELETE no action DEFERRABLE INITIALLY DEFERRED,
	CONSTRAINT "entry_on_day" CHECK("entry"."on_day" GLOB '[12][0-9][0-9][0-9]-[01][0-9]-[0-3][0-9]'),
	CONSTRAINT "entry_payload" CHECK(json_valid("entry"."payload"))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `entry_id_unique` ON `entry` (`id`);--> statement-breakpoint
CREATE INDEX `entry_by_colony` ON `entry` (`colony`,`seq`);--> statement-breakpoint
CREATE TABLE `planned_check` (
	`colony` text NOT NULL,
	`place` integer NOT NULL,
	`rule` text NOT NULL,
	`opens` text NOT NULL,
	`due` text NOT NULL,
	`closes` text NOT NULL,
	`why` text NOT NULL,
	PRIMARY KEY(`colony`, `place`),
	FOREIGN KEY (`colony`) REFERENCES `colony`(`id`) ON UPDATE no action ON DELETE cascade
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE INDEX `planned_check_by_day` ON `planned_check` (`opens`,`closes`);--> statement-breakpoint
CREATE TABLE `setting` (
	`key` text PRIMARY KEY NOT NULL,
	`value` text NOT NULL
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE TRIGGER `entry_no_update` BEFORE UPDATE ON `entry` BEGIN
	SELECT RAISE(ABORT, 'the journal is append-only: an entry is never changed');
END;
--> statement-breakpoint
CREATE TRIGGER `entry_no_delete` BEFORE DELETE ON `entry` BEGIN
	SELECT RAISE(ABORT, 'the journal is append-only: an entry is never deleted');
END;
--> statement-breakpoint
-- INSERT OR REPLACE deletes without firing delete triggers (unless recursive_triggers is on), so look before it acts.
CREATE TRIGGER `entry_no_overwrite` BEFORE INSERT ON `entry`
WHEN EXISTS (SELECT 1 FROM `entry` WHERE `id` = NEW.`id` OR `seq` = NEW.`seq`) BEGIN
	SELECT RAISE(ABORT, 'the journal is append-only: an entry is never overwritten');
END;
