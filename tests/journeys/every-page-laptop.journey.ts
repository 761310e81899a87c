import { describe } from 'vitest'
import { LAPTOP } from '../support/browser.ts'
import { everyPage } from './every-page.ts'

describe('on a laptop', () => everyPage(LAPTOP))
