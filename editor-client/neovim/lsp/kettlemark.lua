--- Kettlemark for `vim.lsp.enable('kettlemark')` of Neovim 0.11 and newer.
---
--- Put this folder on the runtime path and say where the server is:
---
---     vim.lsp.config('kettlemark', { cmd = require('kettlemark').command { jar = '/path/to/kettlemark.jar' } })
---     vim.lsp.enable('kettlemark')
return {
  filetypes = { 'kettlemark' },
  root_dir = function(buffer, found)
    local file = vim.api.nvim_buf_get_name(buffer)
    -- A text without a name has no address that the server could speak of.
    if file ~= '' then
      found(require('kettlemark').root(file))
    end
  end,
  init_options = {
    inlayHints = { grams = true, percent = true, otherScale = true },
    codeLens = { totals = true },
    -- The server offers commands of a client only to one that names them.
    commands = { 'kettlemark.scale.ask', 'kettlemark.show.open' },
  },
}
