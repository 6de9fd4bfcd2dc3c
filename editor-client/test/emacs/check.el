;;; check.el --- Works through a text in a real Emacs as a writer would -*- lexical-binding: t; -*-

;;; Code:

;; Debian keeps Eglot for Emacs 28 in folders that -Q leaves out; from 29 on it is built in.
(unless (require 'eglot nil t)
  (dolist (default-directory '("/usr/share/emacs/site-lisp/elpa/"
                               "/usr/share/emacs/site-lisp/elpa-src/"))
    (when (file-directory-p default-directory)
      (normal-top-level-add-subdirs-to-load-path)))
  (require 'eglot))
(require 'flymake)
(require 'kettlemark-mode)

(defconst check-patience 15)

(setq eglot-sync-connect check-patience
      eglot-connect-timeout check-patience
      eglot-events-buffer-size 0
      eglot-confirm-server-initiated-edits nil
      make-backup-files nil
      create-lockfiles nil
      kettlemark-jar (getenv "JAR"))

(defun check-verified (feature)
  "Take note of FEATURE, which was seen to work."
  (message "%s" feature)
  (let ((coding-system-for-write 'utf-8))
    (write-region (concat feature ": ok\n") nil (getenv "RESULTS") t 'silent)))

(defun check-await (what condition)
  "Wait for CONDITION, called WHAT, and give its value."
  (let ((end (+ (float-time) check-patience)) value)
    (while (and (not (setq value (funcall condition))) (< (float-time) end))
      (accept-process-output nil 0.02))
    (or value (error "Waited in vain for %s; errors are %S" what (check-findings)))))

(defun check-findings ()
  "The messages of all errors here."
  (flymake-start)
  (mapcar #'flymake-diagnostic-text
          (seq-filter (lambda (finding) (eq (flymake-diagnostic-type finding) 'eglot-error))
                      (flymake-diagnostics))))

(defun check-go (line word)
  "Put point on WORD in the first line that matches LINE."
  (goto-char (point-min))
  (re-search-forward line)
  (beginning-of-line)
  (search-forward word (line-end-position))
  (goto-char (1+ (match-beginning 0))))

(defun check-line (line)
  "The first line that matches LINE."
  (save-excursion
    (goto-char (point-min))
    (re-search-forward line)
    (buffer-substring-no-properties (line-beginning-position) (line-end-position))))

(defun check-has (text part)
  "Fail unless TEXT holds PART."
  (unless (string-match-p (regexp-quote part) text)
    (error "%S is not in %S" part text)))

(defun check-open (file)
  "Open FILE of the library with its server."
  (find-file (expand-file-name file (getenv "LIBRARY")))
  (unless (eq major-mode 'kettlemark-mode)
    (error "The mode is %s" major-mode))
  (unless (bound-and-true-p eglot--managed-mode)
    (apply #'eglot (eglot--guess-contact))
    (check-await "the server" (lambda () (bound-and-true-p eglot--managed-mode)))))

(defun check-action (title)
  "Apply the code action whose title holds TITLE at point."
  (let* ((end (save-excursion (forward-word) (point)))
         (actions (append (eglot-code-actions (point) end) nil))
         (action (seq-find (lambda (it) (string-match-p (regexp-quote title) (plist-get it :title)))
                           actions)))
    (unless action
      (error "No action %s in %S" title (mapcar (lambda (it) (plist-get it :title)) actions)))
    (kettlemark--apply (plist-get action :edit))
    (eglot--signal-textDocument/didChange)))

(defun check-colours ()
  "Every kind of word has its face."
  (font-lock-ensure)
  (dolist (case '(("^formula" "formula" font-lock-keyword-face)
                  ("^formula" "lemon" font-lock-type-face)
                  ("^formula" "\"Lemon" font-lock-string-face)
                  ("^# A" "syrup" font-lock-comment-face)
                  ("^  percent" "percent" font-lock-builtin-face)
                  ("^  all of" "all" font-lock-builtin-face)
                  ("^  mix" "mix" font-lock-function-name-face)
                  ("^  boil" "dissolved" font-lock-constant-face)
                  ("^  cook" "°C" font-lock-type-face)
                  ("^  cook" "to" font-lock-keyword-face)))
    (check-go (nth 0 case) (nth 1 case))
    (let ((face (get-text-property (point) 'face)))
      (unless (eq face (nth 2 case))
        (error "%s has face %s" (nth 1 case) face))))
  (check-verified "colours"))

(defun check-story ()
  "The whole story."
  (check-open "lemon.kettle")
  (check-colours)
  (flymake-mode 1)
  (check-has (car (check-await "a finding" #'check-findings)) "sugar burns at 248 °C")
  (check-verified "findings")
  (check-go "white-sugar$" "white-sugar")
  (let ((hover (jsonrpc-request (eglot-current-server) :textDocument/hover
                                (eglot--TextDocumentPositionParams))))
    ;; By hand: 60 % of 1200 g.
    (check-has (eglot--hover-info (plist-get hover :contents) (plist-get hover :range)) "720"))
  (check-verified "hover")
  (check-go "white-sugar$" "white-sugar")
  (unless (all-completions "white" (nth 2 (eglot-completion-at-point)))
    (error "Nothing is offered"))
  (check-verified "completion")
  (check-go "^  all of" "syrup")
  (let ((place (xref-item-location (car (xref-backend-definitions 'eglot "LSP identifier at point.")))))
    (check-has (save-excursion (goto-char (xref-location-marker place)) (thing-at-point 'line))
               "stage syrup"))
  (check-verified "definition")
  (unless (>= (length (xref-backend-references 'eglot "LSP identifier at point.")) 2)
    (error "Too few uses"))
  (check-verified "references")
  (check-has (format "%S" (eglot-imenu)) "lemon-chews")
  (check-verified "outline")
  (check-go "^  cook" "248")
  (check-action "Write 120 °C")
  (check-has (check-line "^  cook") "120 °C")
  (check-await "the end of the error" (lambda () (not (check-findings))))
  (check-verified "fix")
  (cl-letf (((symbol-function 'y-or-n-p) (lambda (_) t)))
    (check-go "^formula" "lemon-chews")
    (kettlemark-scale (kettlemark--formula) 2400))
  (check-has (with-current-buffer "*Weighing list of lemon-chews*" (buffer-string)) "2400")
  (check-has (check-line "^  batch") "2400 g")
  (eglot--signal-textDocument/didChange)
  (check-verified "scaling")
  (kettlemark-show (kettlemark--formula))
  (check-has (with-current-buffer "*lemon-chews*" (buffer-string)) "white-sugar")
  (check-verified "table")
  (check-go "rook-zest$" "rook-zest")
  ;; Eglot asks before it changes texts that are not open.
  (cl-letf (((symbol-function 'y-or-n-p) (lambda (_) t)))
    (eglot-rename "rook-peel"))
  (check-has (check-line "^  mix") "rook-peel")
  (check-verified "renaming across files")
  (eglot--signal-textDocument/didChange)
  (eglot-format-buffer)
  (check-has (check-line "^  mix") "  mix       rook-peel, syrup")
  (check-verified "formatting")
  (save-some-buffers t)
  (let ((process (jsonrpc--process (eglot-current-server))))
    (eglot-shutdown (eglot-current-server))
    (check-await "the end of the server" (lambda () (not (process-live-p process)))))
  (check-verified "the server ends with the editor"))

(defun check-alone ()
  "A text outside the library, and machines without Java."
  (let ((folder (expand-file-name "alone" (getenv "WORK"))))
    (make-directory folder)
    (copy-file (expand-file-name "test/editors/library/lemon.kettle" (getenv "CLIENT"))
               (file-name-as-directory folder))
    (check-open (expand-file-name "lemon.kettle" folder))
    (flymake-mode 1)
    (check-await "a finding" #'check-findings)
    (check-verified "a file of its own")
    (eglot-shutdown (eglot-current-server)))
  (let ((kettlemark-java "/nowhere/java"))
    (condition-case problem
        (progn (kettlemark-server-command) (error "A server without Java"))
      (user-error (check-has (error-message-string problem) "found no program /nowhere/java"))))
  (check-verified "no Java is named")
  (let ((kettlemark-java (expand-file-name "java11" (getenv "WORK"))))
    (condition-case problem
        (progn (kettlemark-server-command) (error "A server with an old Java"))
      (user-error (check-has (error-message-string problem) "found Java 11 at"))))
  (check-verified "old Java is named"))

(defun check-compile ()
  "The checker in a compilation buffer leads to the places."
  (require 'compile)
  (find-file (expand-file-name "alone/lemon.kettle" (getenv "WORK")))
  (let* ((compilation-ask-about-save nil)
         (buffer (compile compile-command)))
    (check-await "the checker" (lambda () (not (get-buffer-process buffer))))
    (with-current-buffer buffer
      (compilation--ensure-parse (point-max))
      (goto-char (point-min))
      (compilation-next-error 1)
      (check-has (thing-at-point 'line) "sugar burns at 248 °C")))
  (check-verified "the checker fills the list of problems"))

(condition-case problem
    (progn (check-story)
           (check-alone)
           (check-compile)
           (kill-emacs 0))
  (error (message "FAILED %s" (error-message-string problem))
         (kill-emacs 1)))
;;; check.el ends here
