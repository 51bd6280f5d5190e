import { fileURLToPath } from "node:url";
import { svelte } from "@sveltejs/vite-plugin-svelte";
import { defineConfig } from "vitest/config";

/** The page is served by the studio from 127.0.0.1; nothing is fetched from anywhere else. */
export default defineConfig({
  plugins: [svelte()],
  base: "./",
  resolve: { alias: { $: fileURLToPath(new URL("./src", import.meta.url)) } },
  build: {
    outDir: fileURLToPath(new URL("../src/quarterturn/studio/page", import.meta.url)),
    emptyOutDir: true,
    assetsInlineLimit: 0, // the page's policy allows no data: sources for scripts and styles
    modulePreload: { polyfill: false },
    target: "es2022",
  },
  test: { include: ["src/**/*.test.ts"] },
});
