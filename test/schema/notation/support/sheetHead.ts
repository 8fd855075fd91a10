/** The parts of a short sheet besides its gearcases. */
export const sheetHead = {
  kind: 'spec-sheet',
  version: '1.0',
  id: 'ferd-2',
  revision: '1',
  machine: { make: 'Nordli', model: 'Ferd 2', type: 'utility machine' },
  sources: { manual: 'Ferd 2 manual' },
}
