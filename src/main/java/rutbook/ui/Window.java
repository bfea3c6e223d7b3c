package rutbook.ui;

class Window {}
