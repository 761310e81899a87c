-- What an address opens: a letter to the customer, or the sheet for the new keeper.
ALTER TABLE `customer_letter` ADD `what` text DEFAULT 'letter' NOT NULL;