import tseslint from 'typescript-eslint';

export default tseslint.config(
  { ignores: ['dist/', 'out/', '**/target/', '**/node_modules/'] },
  {
    files: [
      'src/**/*.ts',
      'webview/**/*.ts',
      'test/unit/**/*.ts',
      'workbench/src/**/*.ts',
      'workbench/test/unit/**/*.ts',
    ],
    extends: [tseslint.configs.strictTypeChecked, tseslint.configs.stylisticTypeChecked],
    languageOptions: { parserOptions: { projectService: true } },
    rules: {
      '@typescript-eslint/explicit-module-boundary-types': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': 'error',
      eqeqeq: 'error',
    },
  },
  {
    // The test runner registers a test by calling it; its promise is the runner's own business.
    files: ['test/unit/**/*.ts', 'workbench/test/unit/**/*.ts'],
    rules: { '@typescript-eslint/no-floating-promises': 'off' },
  },
  {
    files: [
      'scripts/**/*.mjs',
      'test/**/*.mjs',
      'workbench/scripts/*.mjs',
      'workbench/test/**/*.mjs',
    ],
    extends: [tseslint.configs.base],
  },
);
