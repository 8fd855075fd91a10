import type { Shape } from '../base/index.js'

const METER: Shape = { readings: [{}] }

/** What is read in a machine log. */
export const LOG_SHAPE: Shape = {
  meters: { 'hours?': METER, 'distance?': METER },
  records: [{ readings: {}, entries: [{}] }],
  'events?': [{}],
  'pauses?': [{}],
}
