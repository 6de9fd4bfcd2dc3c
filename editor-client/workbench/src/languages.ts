/** The languages that the server has words for. */
export const LANGUAGES = [
  { value: 'en-GB', label: 'English' },
  { value: 'en-US', label: 'English, US' },
  { value: 'de-DE', label: 'Deutsch' },
  { value: 'fr-FR', label: 'Français' },
];
