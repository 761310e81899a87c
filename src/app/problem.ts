/** Errors of the HTTP API: application/problem+json (RFC 9457). */
import type { Problem as DataProblem } from '../journal/index.ts'

export interface ProblemDocument {
  type: 'about:blank'
  title: string
  status: number
  /** A sentence about this very case. */
  detail?: string
  /** What is wrong with what was sent, by entry and field. */
  errors?: { entry?: number; field: string; message: string }[]
}

const TITLES: Record<number, string> = {
  400: 'Bad Request',
  401: 'Unauthorized',
  403: 'Forbidden',
  404: 'Not Found',
  405: 'Method Not Allowed',
  408: 'Request Timeout',
  413: 'Content Too Large',
  415: 'Unsupported Media Type',
  422: 'Unprocessable Content',
  429: 'Too Many Requests',
  500: 'Internal Server Error',
  503: 'Service Unavailable',
  507: 'Insufficient Storage',
}

/** The body of an error. Titles are those of the statuses (RFC 9110), as `about:blank` asks. */
const problemDocument = (
  status: number,
  detail?: string,
  errors?: readonly DataProblem[],
): ProblemDocument => ({
  type: 'about:blank',
  title: TITLES[status] ?? 'Error',
  status,
  ...(detail === undefined ? {} : { detail }),
  ...(errors === undefined
    ? {}
    : {
        errors: errors.map(({ entry, field, message }) => ({
          ...(entry === undefined ? {} : { entry }),
          field,
          message,
        })),
      }),
})

/** The whole answer. */
export const problemResponse = (
  status: number,
  detail?: string,
  more: { errors?: readonly DataProblem[]; headers?: Record<string, string> } = {},
): Response =>
  new Response(JSON.stringify(problemDocument(status, detail, more.errors)), {
    status,
    headers: { 'Content-Type': 'application/problem+json', 'Cache-Control': 'no-store', ...more.headers },
  })

/** Whether a path belongs to the API, so that its errors are problem documents. */
export const isApiPath = (path: string): boolean => path === '/api' || path.startsWith('/api/')
