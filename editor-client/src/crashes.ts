/** How often a server that ends by itself is started again before the writer is asked. */

export const MOST_RESTARTS = 3;

const WINDOW_MS = 5 * 60_000;

export class Crashes {
  private times: number[] = [];

  /** @param now counts on whatever becomes of the clock of the machine */
  constructor(private readonly now: () => number = () => performance.now()) {}

  /** Takes note of a crash; false once it is the fourth within five minutes. */
  mayRestart(): boolean {
    const now = this.now();
    this.times = [...this.times.filter((time) => now - time < WINDOW_MS), now];
    return this.times.length <= MOST_RESTARTS;
  }

  /** The writer has restarted the server: the count begins anew. */
  forget(): void {
    this.times = [];
  }
}
