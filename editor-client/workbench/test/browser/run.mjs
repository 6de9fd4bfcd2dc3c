// node run.mjs STORY: one story after the other; each is a file beside this one.
const [name] = process.argv.slice(2);
const { tell } = await import(`./${name}.mjs`);
await tell();
