/** The meters of a log, as sentences name them. */
export const METER: Readonly<Record<string, string>> = { hours: 'the hour meter', distance: 'the odometer' }
