import type { Reporter, TestModule } from 'vitest/node'

/** Prints `N passed, N failed, N skipped` alone on a line, so that any CI can read how much was run. */
export default class CountReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const count = { passed: 0, failed: 0, skipped: 0 }
    for (const module of modules)
      for (const test of module.children.allTests()) {
        const { state } = test.result()
        count[state === 'pending' ? 'skipped' : state] += 1
      }
    console.log(`${count.passed} passed, ${count.failed} failed, ${count.skipped} skipped`)
  }
}
