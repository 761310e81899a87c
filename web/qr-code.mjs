/** What the worker needs of `qrcode`: SVG. The package's own door for browsers draws on canvases besides. */
import { create } from 'qrcode/lib/core/qrcode.js'
import { render } from 'qrcode/lib/renderer/svg-tag.js'

const svgOf = async (text, options) => render(create(text, options), options)

export { svgOf as toString }
