import { defineConfig } from 'drizzle-kit'

export default defineConfig({
  dialect: 'sqlite',
  schema: [
    './src/store/schema.ts',
    './src/people/schema.ts',
    './src/exchange/calendar-schema.ts',
    './src/store/removal-schema.ts',
  ],
  out: './migrations',
})
