/** Light or dark: as the machine has it, until the writer chooses. */

const KEY = 'kettlemark-lamp';

export type Theme = 'light' | 'dark';

export class Lamp {
  private readonly system = matchMedia('(prefers-color-scheme: dark)');
  private chosen: Theme | undefined;
  private readonly listeners: (() => void)[] = [];

  constructor(private readonly switch_: HTMLElement) {
    const kept = localStorage.getItem(KEY);
    this.chosen = kept === 'light' || kept === 'dark' ? kept : undefined;
    this.system.addEventListener('change', () => {
      this.apply();
    });
    switch_.addEventListener('click', () => {
      this.chosen = this.theme === 'dark' ? 'light' : 'dark';
      localStorage.setItem(KEY, this.chosen);
      this.apply();
    });
    this.apply();
  }

  get theme(): Theme {
    return this.chosen ?? (this.system.matches ? 'dark' : 'light');
  }

  onChange(listener: () => void): void {
    this.listeners.push(listener);
  }

  private apply(): void {
    const { theme } = this;
    document.documentElement.dataset['theme'] = theme;
    this.switch_.textContent = theme === 'dark' ? 'Light paper' : 'Dark paper';
    this.listeners.forEach((listener) => {
      listener();
    });
  }
}
