package dev.kettlemark.publishing;

/** The one script of a published library: it hides the rows that lack a word that was typed. */
final class SiteScript {

  /** Holds neither of the two signs that begin markup, so that it stands in a page as it is. */
  static final String TEXT = """

      'use strict';
      (function () {
        var box = document.getElementById('search');
        var input = document.getElementById('words');
        var found = document.getElementById('found');
        var rows = Array.from(document.querySelectorAll('tr[data-words]'));
        var groups = Array.from(document.querySelectorAll('section.group'));
        function show() {
          var words = input.value.toLocaleLowerCase().split(/\\s+/).filter(Boolean);
          var shown = 0;
          rows.forEach(function (row) {
            var text = row.getAttribute('data-words');
            var fits = words.every(function (word) { return text.includes(word); });
            row.hidden = !fits;
            shown += fits ? 1 : 0;
          });
          groups.forEach(function (group) {
            group.hidden = !group.querySelector('tr[data-words]:not([hidden])');
          });
          found.textContent = found.getAttribute('data-found')
            .replace('##', rows.length).replace('#', shown);
        }
        input.addEventListener('input', show);
        box.hidden = false;
        show();
      }());
      """;

  private SiteScript() {}
}
