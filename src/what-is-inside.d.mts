import type { Plugin } from 'vite'

/** A build's plugin: notes the packages whose code is in what it wrote. */
export function noted(name: string): Plugin
/** Writes dist/licences.txt and dist/sbom.json. */
export function writeWhatIsInside(): void
