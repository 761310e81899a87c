/**
 * Coming checks and windows as a calendar (iCalendar, RFC 5545), for whatever calendar people use anyhow. Days are days:
 * every event is all-day, without a time zone, and blocks no time. Nothing private is in it.
 */

import calendar, { ICalCalendarMethod, ICalEventStatus, ICalEventTransparency } from 'ical-generator'
import { addDays, type Day } from '../../days.ts'
import type { ColonyId } from '../../ids.ts'
import type { Language } from '../../languages.ts'

/** What one event says. The first and the last day are both part of it. */
export interface CalendarEvent {
  /** The same for the same question of the same colony, whatever becomes of its days. */
  uid: string
  /** The colony's id. */
  colony: ColonyId
  yard: string
  from: Day
  to: Day
  title: string
  place: string
  text: string
  /** Path of the page it leads to. */
  path: string
  /** Days that simply pass: once they have, nobody called it off. A question that is gone was answered, or is void. */
  lapses: boolean
}

/** An event with its revision (RFC 5545, 3.8.7.4). */
export interface FeedEvent {
  event: CalendarEvent
  /** From 0; one more with every change. */
  sequence: number
  /** UTC, ISO: when it last changed. */
  changedAt: string
  /** Answered, no longer asked, or gone from this calendar: sent for a while, so that calendars take it out. */
  cancelled: boolean
}

export interface CalendarMeta {
  name: string
  /** As phones reach the book, such as 'https://yard.example'. */
  origin: string
  language: Language
}

/** How often calendars are asked to look again. They decide; most look once or a few times a day. */
const LOOK_AGAIN_SECONDS = 4 * 3600

const PRODUCT = { company: 'Resettle', product: 'Round of checks' }

/** Noon, so that no zone the day is read in makes it another. */
const dateOf = (day: Day): Date => new Date(`${day}T12:00:00Z`)

/** The calendar as text, lines folded and ended as the standard asks. The same events give the same bytes. */
export function calendarText(events: readonly FeedEvent[], { name, origin, language }: CalendarMeta): string {
  const made = calendar({
    name,
    prodId: { ...PRODUCT, language: language.toUpperCase() },
    method: ICalCalendarMethod.PUBLISH,
    ttl: LOOK_AGAIN_SECONDS,
    source: null,
  })
  for (const { event: e, sequence, changedAt, cancelled } of events) {
    const changed = new Date(changedAt)
    made.createEvent({
      id: e.uid,
      allDay: true,
      start: dateOf(e.from),
      // The end of an all-day event is the day after its last (RFC 5545, 3.6.1).
      end: dateOf(addDays(e.to, 1)),
      summary: oneLine(e.title),
      location: oneLine(e.place),
      description: clean(e.text),
      url: `${origin}${e.path}`,
      sequence,
      stamp: changed,
      lastModified: changed,
      status: cancelled ? ICalEventStatus.CANCELLED : ICalEventStatus.CONFIRMED,
      transparency: ICalEventTransparency.TRANSPARENT,
    })
  }
  return made.toString()
}

/** Control characters have no place in a text value (RFC 5545, 3.3.11), line ends apart. */
const clean = (text: string): string => text.replaceAll(/(?!\n)\p{Cc}/gu, ' ')
const oneLine = (text: string): string => clean(text).replaceAll('\n', ' ')
