-- A digest of every entry and of all before it. Entries that are there already get theirs in the same transaction, from
-- src/store/migrate.ts, because SQLite cannot make one.
ALTER TABLE `entry` ADD `digest` text;
