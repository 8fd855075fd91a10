import { published } from '../support/published.js'

/** Grade, sizes in inches (both ends included), proof stress in ksi. Grade 2 up to 3/4 in for bolts up to 6 in long. */
export const SAE_J429: readonly (readonly [grade: string, from: number, to: number, ksi: string])[] =
  published(
    {
      room: 'torque',
      source: 'SAE J429, proof stress of inch bolts',
      edition: 'as in Shigley & Mischke, 5th edition, page 341',
      place: 'a university page quoting the table; the same numbers on a fastener maker’s page',
      read: 'where it is quoted',
      agrees: 'exactly',
    },
    [
      ['1', 0.25, 1.5, '33'],
      ['2', 0.25, 0.75, '55'],
      ['2', 0.875, 1.5, '33'],
      ['4', 0.25, 1.5, '65'],
      ['5', 0.25, 1, '85'],
      ['5', 1.125, 1.5, '74'],
      ['5.2', 0.25, 1, '85'],
      ['7', 0.25, 1.5, '105'],
      ['8', 0.25, 1.5, '120'],
      ['8.2', 0.25, 1, '120'],
    ],
  )
