-- What a review counts of a colony that has left; the rows are made with the plans, after the rules have changed.
CREATE TABLE `stay` (
	`colony` text PRIMARY KEY NOT NULL,
	`tag` text NOT NULL,
	`removal_type` text NOT NULL,
	`yard` text NOT NULL,
	`intake_on` text NOT NULL,
	`recorded_at` text NOT NULL,
	`queen` text NOT NULL,
	`brood_salvaged` integer,
	`outdoor_c` real,
	`hours_open_to_boxed` real,
	`method` text,
	`removed_by` text NOT NULL,
	`looked_after_by` text,
	`last_seen` text NOT NULL,
	`outcome` text NOT NULL,
	`left_on` text NOT NULL,
	`day_unknown` integer NOT NULL,
	`into` text,
	`path` text NOT NULL,
	`queenright_on` text,
	`queens` real NOT NULL,
	`feed` real NOT NULL,
	`other` real NOT NULL,
	`frames` real NOT NULL,
	`unpriced_queens` integer NOT NULL,
	`unpriced_feed` integer NOT NULL,
	`visits` integer NOT NULL,
	`phase_before_loss` text,
	FOREIGN KEY (`colony`) REFERENCES `colony`(`id`) ON UPDATE no action ON DELETE cascade
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE INDEX `colony_by_removal_type` ON `colony` (`removal_type`);--> statement-breakpoint
CREATE INDEX `colony_that_left` ON `colony` (`closed_on`) WHERE closed_on IS NOT NULL;
