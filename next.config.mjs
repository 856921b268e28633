/** Types are checked by `npm test` (a second check here would only slow the first start). */
const config = {
  // Two servers of one checkout (a test beside a running house) must not share a build folder.
  distDir: process.env.STILLROOM_DIST ?? '.next',
  typescript: { ignoreBuildErrors: true },
  poweredByHeader: false,
  devIndicators: false,
};
export default config;
