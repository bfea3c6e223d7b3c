@echo off
rem Starts Rutbook on a plain JDK 17 or later: JavaFX on the module path, the rest on the class path.
setlocal
set "here=%~dp0.."
set "java=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
"%java%" -Drutbook.home="%here%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xshare:auto ^
  --module-path "%here%\lib\javafx" --add-modules javafx.controls ^
  -cp "%here%\lib\*" rutbook.app.Main %*
