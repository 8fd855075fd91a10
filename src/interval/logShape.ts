import type { Shape } from '../base/index.js'

const METER_SHAPE: Shape = { readings: [{}] }

/** The parts of a machine log that are read. */
export const LOG_SHAPE: Shape = {
  meters: { 'hours?': METER_SHAPE, 'distance?': METER_SHAPE },
  records: [{ readings: {}, entries: [{}] }],
  'events?': [{}],
  'pauses?': [{}],
}
