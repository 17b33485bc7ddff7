### Cómo salió.

feedback-button-meat-underdone = Poco cocido
feedback-word-meat-underdone = poco cocido
