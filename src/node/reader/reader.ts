/**
 * Long pages of a large yard, made in a thread of their own on a connection that only reads, so that whoever records a
 * visit meanwhile does not wait for them. One thread, started when it is first asked and ended when nobody has asked for a
 * while; what takes too long, or is made for somebody who has gone, is ended with it.
 */
import { Worker } from 'node:worker_threads'
import { HTTPException } from 'hono/http-exception'
import type { Viewer } from '../../app/index.ts'
import { backupProblem, type Prove } from '../../store/node.ts'
import { sparing } from '../memory.ts'
import { type Asked, type FromThread, passedOn, type ThreadData, type ToThread } from './messages.ts'

export interface ReaderOptions extends ThreadData {
  /** The program of the thread. */
  program: URL
  report: (error: unknown, request: string) => void
  times?: ReaderTimes
}

/** In milliseconds. */
interface ReaderTimes {
  /** From the question to the first byte. */
  patience: number
  /** A page for nobody may go on so long before its thread is ended. */
  grace: number
  /** The thread is ended when nobody has asked for so long. */
  idle: number
}

const TIMES: ReaderTimes = { patience: 30_000, grace: 1000, idle: 120_000 }

export interface Question {
  method: string
  /** Whole, as the yard is called from outside. */
  url: string
  headers: Headers
  viewer: Viewer
  now: Date
  /** Ends when whoever asked has gone. */
  signal: AbortSignal
}

export interface Reader {
  /** Makes a page. Rejects with what the server answers: 503 when it takes too long. */
  answer(question: Question): Promise<Response>
  /** Why a copy of the database cannot serve as a backup, or null. */
  prove: Prove
  close(): Promise<void>
}

interface Job {
  message: Asked
  answer: (response: Response) => void
  fail: (error: unknown) => void
  /** Set once the beginning was sent: the rest of the body. */
  body: { part: (bytes: Uint8Array | null) => void; broken: (error: unknown) => void } | null
}

export const readerOf = (options: ReaderOptions): Reader => new ThreadReader(options)

class ThreadReader implements Reader {
  readonly #options: ReaderOptions
  readonly #times: ReaderTimes
  readonly #jobs = new Map<number, Job>()
  readonly #proofs = new Map<number, { file: string; proved: (problem: string | null) => void }>()
  #made = 0
  /** Pages asked of this thread. */
  #asked = 0
  #thread: Worker | null = null
  /** The page that is being worked at. */
  #at = 0
  #idle: NodeJS.Timeout | undefined

  constructor({ times = TIMES, ...options }: ReaderOptions) {
    this.#options = options
    this.#times = times
  }

  answer({ method, url, headers, viewer, now, signal }: Question): Promise<Response> {
    return new Promise((resolve, reject) => {
      const id = ++this.#made
      const end = (response: Response): void => {
        this.#stop(id)
        reject(new HTTPException(503, { res: response }))
      }
      const late = setTimeout(() => end(tooLong()), this.#times.patience)
      const gone = (): void => end(new Response(null, { status: 503 }))
      signal.addEventListener('abort', gone, { once: true })
      const settled = (): void => {
        clearTimeout(late)
        signal.removeEventListener('abort', gone)
      }
      const message: Asked = {
        kind: 'ask',
        id,
        method,
        url,
        headers: passedOn(headers),
        viewer,
        now: now.toISOString(),
      }
      this.#jobs.set(id, {
        message,
        answer(response) {
          settled()
          resolve(response)
        },
        fail(error) {
          settled()
          reject(error)
        },
        body: null,
      })
      clearTimeout(this.#idle)
      this.#asked++
      this.#say(message)
    })
  }

  readonly prove = (file: string): Promise<string | null> =>
    new Promise((proved) => {
      const id = ++this.#made
      this.#proofs.set(id, { file, proved })
      clearTimeout(this.#idle)
      this.#say({ kind: 'prove', id, file })
    })

  async close(): Promise<void> {
    clearTimeout(this.#idle)
    const old = this.#thread
    this.#thread = null
    this.#failAll()
    await old?.terminate()
  }

  #say(message: ToThread): void {
    this.#thread ??= this.#start()
    this.#thread.postMessage(message)
  }

  #start(): Worker {
    const { program, file, zone, report } = this.#options
    const data: ThreadData = { file, zone }
    const thread = new Worker(program, { workerData: data, name: 'reader' })
    thread.unref()
    // A thread that starts sets this anew, for all of them.
    thread.once('online', () => sparing(process.env))
    thread.on('message', (message: FromThread) => this.#hear(message))
    thread.on('error', (error) => report(error, 'reading thread'))
    thread.on('exit', () => {
      if (this.#thread !== thread) return
      // By itself: a bug of ours, or no memory left.
      this.#thread = null
      this.#failAll()
    })
    return thread
  }

  #failAll(): void {
    // A proof that was not to be had there is made here.
    for (const { file, proved } of this.#proofs.values()) proved(backupProblem(file))
    this.#proofs.clear()
    for (const id of [...this.#jobs.keys()]) this.#drop(id, new Error('the reading thread ended'))
  }

  #drop(id: number, error: unknown): void {
    const job = this.#jobs.get(id)
    this.#jobs.delete(id)
    if (job?.body) job.body.broken(error)
    else job?.fail(error)
  }

  #hear(message: FromThread): void {
    if (message.kind === 'bug') {
      this.#options.report(message.error, message.request)
      return
    }
    const { id } = message
    if (message.kind === 'proved') {
      this.#proofs.get(id)?.proved(message.problem)
      this.#proofs.delete(id)
      this.#restIfDone(this.#jobs.size === 0 && this.#asked === 0 ? 0 : this.#times.idle)
      return
    }
    if (message.kind === 'begun') {
      this.#at = id
      if (!this.#jobs.has(id)) this.#endSoon(id)
    } else if (message.kind !== 'part' && this.#at === id) this.#at = 0
    const job = this.#jobs.get(id)
    if (job === undefined) return
    if (message.kind === 'failed') this.#drop(id, new Error(message.message))
    if (message.kind === 'head') {
      const { status, headers } = message
      job.answer(new Response(this.#bodyOf(id, job), { status, headers }))
    }
    if (message.kind === 'part') {
      job.body?.part(message.bytes)
      if (message.bytes === null) this.#jobs.delete(id)
    }
    this.#restIfDone()
  }

  #bodyOf(id: number, job: Job): ReadableStream<Uint8Array> {
    let done: (() => void) | undefined
    return new ReadableStream<Uint8Array>(
      {
        start: (controller) => {
          job.body = {
            part(bytes) {
              if (bytes === null) controller.close()
              else controller.enqueue(bytes)
              done?.()
            },
            broken(error) {
              controller.error(error)
              done?.()
            },
          }
        },
        pull: () =>
          new Promise((resolve) => {
            done = resolve
            this.#say({ kind: 'more', id })
          }),
        cancel: () => this.#stop(id),
      },
      { highWaterMark: 0 },
    )
  }

  #stop(id: number): void {
    if (!this.#jobs.delete(id)) return
    this.#say({ kind: 'stop', id })
    if (this.#at === id) this.#endSoon(id)
    this.#restIfDone()
  }

  /** A page that nobody waits for: between two slices it hears that, in the middle of a long one only the end of its thread stops it. */
  #endSoon(id: number): void {
    setTimeout(() => {
      if (this.#at === id) this.#restart()
    }, this.#times.grace).unref()
  }

  /** Ends the thread in the middle of a page; what else was asked of it is asked of the next one. */
  #restart(): void {
    const old = this.#thread
    this.#thread = null
    this.#at = 0
    old?.terminate().catch(() => undefined)
    for (const [id, { body, message }] of this.#jobs) {
      // What is half sent cannot be made again.
      if (body !== null) this.#drop(id, new Error('broken off'))
      else this.#say(message)
    }
    for (const [id, { file }] of this.#proofs) this.#say({ kind: 'prove', id, file })
  }

  /** Ends the thread some time after its last answer; at once where only a backup was proved. */
  #restIfDone(after = this.#times.idle): void {
    if (this.#jobs.size + this.#proofs.size > 0) return
    clearTimeout(this.#idle)
    this.#idle = setTimeout(() => {
      const old = this.#thread
      this.#thread = null
      old?.terminate().catch(() => undefined)
      this.#asked = 0
    }, after)
    this.#idle.unref()
  }
}

const tooLong = (): Response => new Response('This took too long. Try again.', { status: 503 })
