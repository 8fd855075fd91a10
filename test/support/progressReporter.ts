import { DefaultReporter, type TestModule, type TestSpecification } from 'vitest/node'

/**
 * At most one line per second with the number of finished files and tests, with or without a terminal. The last line is
 * `N passed, N failed, N skipped`, so that any CI can read the totals.
 */
export default class ProgressReporter extends DefaultReporter {
  private readonly count = { passed: 0, failed: 0, skipped: 0 }
  private files = 0
  private done = 0
  private began = 0
  private printed = 0

  constructor() {
    super({ summary: false })
  }

  override onTestRunStart(specifications: readonly TestSpecification[]): void {
    this.files = specifications.length
    this.began = performance.now()
    super.onTestRunStart(specifications)
  }

  override onTestModuleEnd(module: TestModule): void {
    for (const test of module.children.allTests()) {
      const { state } = test.result()
      this.count[state === 'pending' ? 'skipped' : state] += 1
    }
    this.done += 1
    super.onTestModuleEnd(module)
  }

  protected override printTestModule(module: TestModule): void {
    if (module.state() === 'failed') super.printTestModule(module)
    const now = performance.now()
    if (now - this.printed < 1000 && this.done < this.files) return
    this.printed = now
    const tests = this.count.passed + this.count.failed + this.count.skipped
    const seconds = Math.round((now - this.began) / 1000)
    this.log(`${this.done} of ${this.files} files, ${tests} tests, ${seconds} s`)
  }

  override onTestRunEnd(...run: Parameters<DefaultReporter['onTestRunEnd']>): void {
    super.onTestRunEnd(...run)
    const { passed, failed, skipped } = this.count
    this.log(`${passed} passed, ${failed} failed, ${skipped} skipped`)
  }
}
