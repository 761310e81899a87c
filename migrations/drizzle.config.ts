import { defineConfig } from 'drizzle-kit'

export default defineConfig({
  dialect: 'sqlite',
  schema: [
    './src/store/schema.ts',
    './src/people/schema.ts',
    './src/features/calendar/schema.ts',
    './src/store/removal-schema.ts',
    './src/store/after-schema.ts',
    './src/store/import-schema.ts',
    './src/people/api-token-schema.ts',
    './src/people/calendar-address-schema.ts',
    './src/features/messages/schema.ts',
  ],
  out: './migrations',
})
