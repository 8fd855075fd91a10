/**
 * Published examples of the setting with an adaptor. Marks: R read in the source, C calculated exactly from the formula
 * outside our code. `printed` has the source's own digits.
 */
export const TORQUE_ADAPTORS = [
  {
    source: 'US Navy aviation training manual (NAVEDTRA 14315 family), figs 3-44 and 3-45',
    mark: 'R',
    torque: 100,
    unit: 'lbf.in',
    lever: 12,
    extension: 6,
    angle: undefined,
    printed: '66.7',
  },
  {
    source: 'US Army TM 1-1500-204-23-9, fig 8-16',
    mark: 'R',
    torque: 300,
    unit: 'lbf.in',
    lever: 10,
    extension: 4,
    angle: undefined,
    printed: '214',
  },
  {
    source: "a helicopter maker's maintenance manual, chapter 20",
    mark: 'R',
    torque: 135,
    unit: 'lbf.in',
    lever: 10,
    extension: 1.5,
    angle: undefined,
    printed: '117',
  },
  {
    source: "a wrench maker's help page",
    mark: 'R',
    torque: 30,
    unit: 'lbf.ft',
    lever: 12,
    extension: 6,
    angle: undefined,
    printed: '20',
  },
  {
    source: 'formula of US Army TM 9-254, fig 4-6, worked at 45 degrees',
    mark: 'C',
    torque: 100,
    unit: 'lbf.ft',
    lever: 12,
    extension: 6,
    angle: 45,
    printed: '73.8796',
  },
] as const
