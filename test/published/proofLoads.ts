import { published } from '../support/published.js'

/** Coarse threads, N by property class. */
export const PROOF_LOADS: readonly { thread: string; newtons: Readonly<Record<string, number>> }[] =
  published(
    {
      room: 'torque',
      source: 'ISO 898-1, proof loads of bolts',
      edition: '1999',
      place: 'table for coarse threads, on a fastener distributor’s page',
      read: 'where it is quoted',
      agrees: 'within 0.7 %: the table was calculated from rounded areas',
      values: ({ newtons }) => Object.keys(newtons).length,
    },
    [
      {
        thread: 'M6',
        newtons: { '4.6': 4520, '5.8': 7640, '8.8': 11600, '9.8': 13100, '10.9': 16700, '12.9': 19500 },
      },
      {
        thread: 'M8',
        newtons: { '4.6': 8240, '5.8': 13900, '8.8': 21200, '9.8': 23800, '10.9': 30400, '12.9': 35500 },
      },
      {
        thread: 'M10',
        newtons: { '4.6': 13000, '5.8': 22000, '8.8': 33700, '9.8': 37700, '10.9': 48100, '12.9': 56300 },
      },
      {
        thread: 'M12',
        newtons: { '4.6': 19000, '5.8': 32000, '8.8': 48900, '9.8': 54800, '10.9': 70000, '12.9': 81800 },
      },
      {
        thread: 'M14',
        newtons: { '4.6': 25900, '5.8': 43700, '8.8': 66700, '9.8': 74800, '10.9': 95500, '12.9': 112000 },
      },
      {
        thread: 'M16',
        newtons: { '4.6': 35300, '5.8': 59700, '8.8': 91000, '9.8': 102000, '10.9': 130000, '12.9': 152000 },
      },
      {
        thread: 'M18',
        newtons: { '4.6': 43200, '5.8': 73000, '8.8': 115000, '10.9': 159000, '12.9': 186000 },
      },
      {
        thread: 'M20',
        newtons: { '4.6': 55100, '5.8': 93100, '8.8': 147000, '10.9': 203000, '12.9': 238000 },
      },
      {
        thread: 'M22',
        newtons: { '4.6': 68200, '5.8': 115000, '8.8': 182000, '10.9': 252000, '12.9': 294000 },
      },
      {
        thread: 'M24',
        newtons: { '4.6': 79400, '5.8': 134000, '8.8': 212000, '10.9': 293000, '12.9': 342000 },
      },
    ],
  )

/**
 * 3/8-16 UNC grade 5 at 75 % of proof: 0.75 × 85,000 psi × 0.0775 in² = 4940 lbf. 30.875 and 23.156 lbf·ft without
 * rounding; the source cuts the first one off.
 */
export const IFI_EXAMPLE = published(
  {
    room: 'torque',
    source: 'IFI Technical Data N-12/N-16',
    edition: '5th',
    place: 'worked example with K 0.20 and 0.15',
    read: 'in the source',
    agrees: 'to the printed digits; 30 is cut off, not rounded',
    statements: 2,
    values: () => 2,
  },
  {
    thread: '3/8-16 UNC',
    propertyClass: 'grade 5',
    preloadPounds: 4940,
    cases: [
      { nutFactor: 0.2, printed: '30', unrounded: '30.875' },
      { nutFactor: 0.15, printed: '23', unrounded: '23.156' },
    ],
  },
)

/** 75 % of proof, class 8.8, K 0.20: kN and N·m. */
export const WORKED_CLAMP = published(
  {
    room: 'torque',
    source: 'T = K·d·F with the stress areas and proof stress of ISO 898-1',
    edition: '1999',
    place: 'calculated by hand',
    read: 'calculated',
    agrees: 'to the digits shown',
    values: () => 2,
  },
  [
    { thread: 'M8', kilonewtons: '15.92', newtonMetres: '25.47' },
    { thread: 'M10', kilonewtons: '25.23', newtonMetres: '50.46' },
    { thread: 'M12', kilonewtons: '36.67', newtonMetres: '88.01' },
  ],
)
