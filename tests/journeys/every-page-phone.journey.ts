import { describe } from 'vitest'
import { PHONE } from '../support/browser.ts'
import { everyPage } from './every-page.ts'

describe('on a phone', () => everyPage(PHONE))
