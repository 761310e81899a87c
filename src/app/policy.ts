/** What every page tells the browser to refuse. Pages that a phone makes itself say the same. */

const SELF = ["'self'"]

/** Scripts, styles, workers and connections from this server only; nothing inline; framed by nobody. */
const POLICY = {
  defaultSrc: ["'none'"],
  scriptSrc: SELF,
  styleSrc: SELF,
  imgSrc: ["'self'", 'data:', 'blob:'],
  fontSrc: SELF,
  connectSrc: SELF,
  manifestSrc: SELF,
  workerSrc: SELF,
  formAction: SELF,
  baseUri: ["'none'"],
  frameAncestors: ["'none'"],
}

export const NO_SNIFFING_AROUND = {
  contentSecurityPolicy: POLICY,
  // 'no-referrer' would make browsers send "Origin: null" with forms, which must be refused as foreign.
  referrerPolicy: 'same-origin',
  xFrameOptions: 'DENY',
  permissionsPolicy: { geolocation: [], microphone: [], payment: [], usb: [] },
}
