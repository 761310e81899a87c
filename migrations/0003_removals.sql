-- Removal sheets, which colonies came of them, and the history of the protocol.
-- STRICT and WITHOUT ROWID by hand, as README.md in this folder says.
CREATE TABLE `protocol_change` (
	`seq` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`changed_at` text NOT NULL,
	`changed_by` text NOT NULL,
	`before` text NOT NULL,
	`after` text NOT NULL,
	`reason` text,
	CONSTRAINT "protocol_change_json" CHECK(json_valid("protocol_change"."before") AND json_valid("protocol_change"."after"))
) STRICT;
--> statement-breakpoint
CREATE TABLE `removal_colony` (
	`colony` text PRIMARY KEY NOT NULL,
	`sheet` text NOT NULL,
	`linked_at` text NOT NULL,
	`linked_by` text NOT NULL
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE INDEX `removal_colony_by_sheet` ON `removal_colony` (`sheet`);--> statement-breakpoint
CREATE TABLE `removal_sheet` (
	`sheet` text NOT NULL,
	`version` integer NOT NULL,
	`saved_at` text NOT NULL,
	`saved_by` text NOT NULL,
	`payload` text NOT NULL,
	PRIMARY KEY(`sheet`, `version`),
	CONSTRAINT "removal_sheet_payload" CHECK(json_valid("removal_sheet"."payload"))
) STRICT;
