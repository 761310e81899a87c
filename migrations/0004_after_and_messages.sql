-- Letters to customers, move-out records, tokens of the HTTP API, and the morning digest.
-- STRICT by hand, as README.md in this folder says.
CREATE TABLE `customer_letter` (
	`id` text PRIMARY KEY NOT NULL,
	`colony` text NOT NULL,
	`digest` text NOT NULL,
	`as_of` text NOT NULL,
	`words` text,
	`created_at` text NOT NULL,
	`created_by` text NOT NULL,
	`expires_at` text NOT NULL,
	`revoked_at` text
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `customer_letter_digest_unique` ON `customer_letter` (`digest`);--> statement-breakpoint
CREATE INDEX `customer_letter_by_colony` ON `customer_letter` (`colony`);--> statement-breakpoint
CREATE TABLE `move_record` (
	`colony` text NOT NULL,
	`version` integer NOT NULL,
	`saved_at` text NOT NULL,
	`saved_by` text NOT NULL,
	`payload` text NOT NULL,
	PRIMARY KEY(`colony`, `version`),
	CONSTRAINT "move_record_payload" CHECK(json_valid("move_record"."payload"))
) STRICT;
--> statement-breakpoint
CREATE TABLE `api_token` (
	`id` text PRIMARY KEY NOT NULL,
	`digest` text NOT NULL,
	`person` text NOT NULL,
	`name` text NOT NULL,
	`scopes` text NOT NULL,
	`created_at` text NOT NULL,
	`used_at` text,
	`expires_at` text NOT NULL,
	`revoked_at` text,
	FOREIGN KEY (`person`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `api_token_digest_unique` ON `api_token` (`digest`);--> statement-breakpoint
CREATE INDEX `api_token_by_person` ON `api_token` (`person`);--> statement-breakpoint
CREATE TABLE `message_choice` (
	`person` text PRIMARY KEY NOT NULL,
	`mail` text,
	`hook` text,
	`secret` text,
	`hour` integer NOT NULL,
	`from_day` text NOT NULL,
	`changed_at` text NOT NULL,
	FOREIGN KEY (`person`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "message_choice_hour" CHECK("message_choice"."hour" BETWEEN 0 AND 23)
) STRICT;
--> statement-breakpoint
CREATE TABLE `message_sent` (
	`person` text NOT NULL,
	`day` text NOT NULL,
	`way` text NOT NULL,
	`state` text NOT NULL,
	`attempts` integer NOT NULL,
	`again_at` text,
	`trouble` text,
	`changed_at` text NOT NULL,
	PRIMARY KEY(`person`, `day`, `way`),
	FOREIGN KEY (`person`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "message_sent_state" CHECK("message_sent"."state" IN ('sending', 'sent', 'again', 'given-up'))
) STRICT;
