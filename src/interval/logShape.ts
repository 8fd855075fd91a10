import type { Shape } from '../base/index.js'

const METER: Shape = { readings: [{}] }

/** The parts of a machine log that are read. */
export const LOG_SHAPE: Shape = {
  meters: { 'hours?': METER, 'distance?': METER },
  records: [{ readings: {}, entries: [{}] }],
  'events?': [{}],
  'pauses?': [{}],
}
