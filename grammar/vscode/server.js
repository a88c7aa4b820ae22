'use strict';

/** How the program is started that answers: by what the settings say. */
exports.serverOf = (settings) => ({
  command: settings.get('path', 'wiretext'),
  args: ['language-server', ...settings.get('parts', []).flatMap((folder) => ['--parts', folder])],
});
