/**
 * Line drawings of what is meant by a question. One pen, one ink (the colour of the text), no shading, so that they read
 * in the sun, in the dark and in print. Comb is shown cut open from the side: cell walls stand, the midrib lies at the
 * bottom; queen cells hang from the lower edge of a comb, as they do in the hive.
 */
import type { Child } from 'hono/jsx'

const DRAWINGS = [
  'egg',
  'larva',
  'flat-caps',
  'raised-caps',
  'cup',
  'open-cell',
  'capped-cell',
  'emerged-cell',
  'torn-cell',
  'drone',
  'virgin',
  'queen',
  'many-eggs',
  'comb-ties',
  'chalkbrood',
  'sunken-caps',
] as const
export type DrawingName = (typeof DRAWINGS)[number]

/** What each drawing shows, for those who do not see it and as its caption. */
export type Captions = Readonly<Record<DrawingName, string>>

/** Cell walls and midrib, three cells wide. */
const Comb = () => <path d="M6 50H58M6 50V24M23.3 50V24M40.6 50V24M58 50V24" />
/** An egg standing at (x, 50), leaning a little. */
const egg = (x: number, lean = 2): string => `M${x} 49.5c-1.6-2-1.2-6 ${lean}-8.5 1.8 2.4 1.6 6.4 0 8.5z`
/** A grub in a C, lying at the bottom of the cell around x. */
const grub = (x: number): string =>
  `M${x + 4.5} 40.5c-5-2.8-10.4.6-9.4 5 .8 3.4 6.4 4.4 9.2 1.6-2.2.6-4.6-.2-4.8-2 -.2-1.8 2.4-3 4.2-1.8z`
/** The lower edge of a comb, from which queen cells hang. */
const Edge = () => <path d="M8 8H56M8 8v7c8 5 14-2 20 2M56 8v7c-8 5-14-2-20 2" />
/** A frame with its top bar. */
const Frame = () => <path d="M4 12H60M9 12V54H55V12M4 12V17H9M60 12V17H55" />

const SHAPES: Record<DrawingName, Child> = {
  egg: (
    <>
      <Comb />
      <path d={`${egg(14)}${egg(32, 1)}${egg(49, -1)}`} />
    </>
  ),
  larva: (
    <>
      <Comb />
      <path d={`${grub(14.5)}${grub(32)}${grub(49.3)}`} />
    </>
  ),
  'flat-caps': (
    <>
      <Comb />
      <path d="M6 24q8.6-3 17.3 0 8.6-3 17.3 0 8.6-3 17.4 0" />
      <path d="M10 30h9M27.500 30h9M45 30h9" stroke-dasharray="1 3" />
    </>
  ),
  'raised-caps': (
    <>
      <Comb />
      <path d="M6 24c1-12 16-12 17.300 0 1-12 16-12 17.300 0 1-12 16-12 17.400 0" />
      <path d="M10 31h9M27.500 31h9M45 31h9" stroke-dasharray="1 3" />
    </>
  ),
  cup: (
    <>
      <Edge />
      <path d="M26 17c-1 6 1 11 3 12M38 17c1 6-1 11-3 12M29 29c2 1.500 4 1.500 6 0" stroke-dasharray="0" />
      <path d="M28.500 28.500c2-1.400 5-1.400 7 0" />
    </>
  ),
  'open-cell': (
    <>
      <Edge />
      <path d="M25 17c-3 9-2 20 2 27M39 17c3 9 2 20-2 27M27 44c3-2 7-2 10 0" />
      <path d="M28 22c3 3 6 3 8 0" />
      <path d="M35 25c-4-2-8 1-7 5s6 4 8 1c-2 1-5 0-4-2s2-2 3-1z" />
    </>
  ),
  'capped-cell': (
    <>
      <Edge />
      <path d="M25 17c-4 12-3 26 3 34 2 3 6 3 8 0 6-8 7-22 3-34" />
      <path d="M26 26l4 2M24.500 33l4 2M38 26l-4 2M39.500 33l-4 2M28 42l3 1M36 42l-3 1" />
      <path d="M28.500 47c2 1.600 5 1.600 7 0" stroke-dasharray="2 2" />
    </>
  ),
  'emerged-cell': (
    <>
      <Edge />
      <path d="M25 17c-4 12-3 22 2 30M39 17c4 12 3 22-2 30M27 47c3-2 7-2 10 0" />
      <path d="M37 47c3 2 4 6 2 9-3 1-7-2-8-5" />
      <path d="M26 26l4 2M38 26l-4 2M24.500 33l4 2M39.500 33l-4 2" />
    </>
  ),
  'torn-cell': (
    <>
      <Edge />
      <path d="M25 17c-4 12-3 26 3 34 2 3 6 3 8 0 2-3 3-6 4-9M39 17c1 3 1.600 6 1.800 9" />
      <path d="M40.800 26l-4 2 2 3-4 2 3 3-2 3 4.200 3" />
      <path d="M26 26l4 2M24.500 33l4 2" />
    </>
  ),
  drone: (
    <>
      <circle cx="32" cy="16" r="7" />
      <path d="M32 9.500v9M25 13c3 2 5 2 7-1M39 13c-3 2-5 2-7-1" />
      <path d="M24 24h16v8H24z" />
      <path d="M23 33c-1 12 2 21 9 22 7-1 10-10 9-22z" />
      <path d="M23 40h18M24 47h16" />
      <path d="M24 27c-9 3-14 12-13 22 6-3 10-10 12-17M40 27c9 3 14 12 13 22-6-3-10-10-12-17" />
    </>
  ),
  virgin: (
    <>
      <circle cx="32" cy="12" r="4.500" />
      <path d="M28 18h8v7h-8z" />
      <path d="M28 26c-1 12 1 23 4 29 3-6 5-17 4-29z" />
      <path d="M28 33h8M28.500 40h7M29.500 47h5" />
      <path d="M28 20c-6 4-9 12-8 21 4-3 7-9 8-15M36 20c6 4 9 12 8 21-4-3-7-9-8-15" />
    </>
  ),
  queen: (
    <>
      <circle cx="32" cy="10" r="4.500" />
      <path d="M27.500 16h9v7h-9z" />
      <path d="M27 24c-2 14 0 28 5 37 5-9 7-23 5-37z" />
      <path d="M26.500 32h11M26.500 40h11M28 48h8M29.500 55h5" />
      <path d="M27.500 18c-5 3-8 10-7 18 4-2 6-7 7-12M36.500 18c5 3 8 10 7 18-4-2-6-7-7-12" />
    </>
  ),
  'many-eggs': (
    <>
      <Comb />
      <path d={`${egg(11)}${egg(15, -2)}${egg(19, 1)}${egg(30)}${egg(35, -2)}${egg(46, 2)}${egg(52)}`} />
      <path d="M23.600 38c2.500-1.600 5-1.400 6.500.2-1.600 1.700-4.400 1.700-6.500-.2M40.300 33c-2.500-1.600-5-1.400-6.500.2 1.600 1.700 4.400 1.700 6.500-.2M6.400 36c2.500-1.600 5-1.400 6.500.2-1.600 1.700-4.400 1.700-6.500-.2" />
    </>
  ),
  'comb-ties': (
    <>
      <Frame />
      <path d="M13 14c-1 16 4 32 19 34 14 0 20-14 19-34" />
      <path d="M21 8V58M24 8V58M40 8V58M43 8V58" />
    </>
  ),
  chalkbrood: (
    <>
      <Comb />
      <path d="M10 47c-1-8 1-16 5-17 4 1 5 9 4 17zM45 47c-1-8 1-16 5-17 4 1 5 9 4 17z" />
      <path d="M11 42l7-3M11 36l6-2M46 42l7-3M46 36l6-2" />
      <path d="M30 14c3-2 6 0 6 3s-4 4-6 2-2-4 0-5zM20 8c2-1 4 0 4 2" />
    </>
  ),
  'sunken-caps': (
    <>
      <Comb />
      <path d="M6 24q8.600 9 17.300 0M40.600 24q8.600 9 17.400 0" />
      <path d="M23.300 24q3 4 6 4.600M40.600 24q-3 4-6 4.600M29.300 28.600l1.600 2.400 1.800-1.800 1.900-.6" />
      <path d="M27 40c3-2 7-2 10 0M10 40c3 3 6 3 9 0" stroke-dasharray="2 2" />
    </>
  ),
}

interface DrawingProps {
  of: DrawingName
  /** Left out where its words stand beside it already. */
  caption?: string
  size?: number
}

/** A drawing with its words below it. */
export const Drawing = ({ of, caption, size = 64 }: DrawingProps) => (
  <figure class="drawing">
    <svg
      viewBox="0 0 64 64"
      width={size}
      height={size}
      fill="none"
      stroke="currentColor"
      stroke-width="2"
      stroke-linecap="round"
      stroke-linejoin="round"
      aria-hidden="true"
    >
      {SHAPES[of]}
    </svg>
    {caption === undefined ? null : <figcaption>{caption}</figcaption>}
  </figure>
)
