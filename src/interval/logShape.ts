import type { Shape } from './requireShape.js'

const METER: Shape = { readings: [{}] }

/** What is walked into in a machine log. */
export const LOG_SHAPE: Shape = {
  meters: { 'hours?': METER, 'distance?': METER },
  records: [{ readings: {}, entries: [{}] }],
  'events?': [{}],
  'pauses?': [{}],
}
