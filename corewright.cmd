@echo off
rem Runs the station: corewright --help
rem Builds it first when the jar is missing or older than its sources.
rem Leaves with the program's exit code; or with 69 when there is none to run: no Java, no Maven, a failed build.
setlocal EnableExtensions DisableDelayedExpansion
set "home=%~dp0"
if "%home:~-1%"=="\" set "home=%home:~0,-1%"
set "jar=%home%\station\target\corewright.jar"

set "java=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
set "spec=0"
for /f "tokens=2 delims==" %%v in ('cmd /c ""%java%" -XshowSettings:properties -version 2>&1" ^| findstr /c:"java.specification.version ="') do set "spec=%%v"
for /f "delims=. " %%m in ("%spec%") do set "major=%%m"
if %major% lss 17 (
  echo corewright: Java 17 or newer is needed. 1>&2
  echo corewright: Install a JDK, version 17 or newer, from https://adoptium.net, 1>&2
  echo corewright: and put its bin folder on the PATH or set JAVA_HOME. 1>&2
  exit /b 69
)

set "stale="
if not exist "%jar%" set "stale=yes"
if not defined stale for /f %%s in ('powershell -NoProfile -Command "$h = $env:home; $t = (Get-Item -LiteralPath $env:jar).LastWriteTimeUtc; $d = Get-ChildItem -LiteralPath $h -Directory; $p = @(Get-Item -LiteralPath (Join-Path $h 'pom.xml')); foreach ($m in $d) { $x = Join-Path $m.FullName 'pom.xml'; if (Test-Path -LiteralPath $x) { $p += Get-Item -LiteralPath $x; $s = Join-Path $m.FullName 'src\main'; if (Test-Path -LiteralPath $s) { $p += Get-ChildItem -LiteralPath $s -Recurse } } }; if ($p | Where-Object { $_.LastWriteTimeUtc -gt $t }) { 'yes' }"') do set "stale=%%s"
if not defined stale goto run

where mvn >nul 2>nul
if errorlevel 1 (
  echo corewright: The program must be built first, and there is no Maven ^(mvn^) on the PATH. 1>&2
  echo corewright: Install Maven, version 3.8 or newer, from https://maven.apache.org 1>&2
  exit /b 69
)
echo corewright: Building the program. The first time, libraries are fetched; that can take some minutes. 1>&2
pushd "%home%"
call mvn -B -ntp -DskipTests package 1>&2
set "code=%errorlevel%"
popd
if not "%code%"=="0" (
  echo corewright: The build failed. 1>&2
  exit /b 69
)

:run
set "native="
if %major% geq 22 set "native=--enable-native-access=ALL-UNNAMED"
rem A folder of its own for the serial library: two processes that unpack into one can crash.
"%java%" -XX:+UseSerialGC -Djava.awt.headless=true -Dfile.encoding=UTF-8 "-Dcorewright.home=%home%" %COREWRIGHT_JAVA_OPTIONS% %native% -jar "%jar%" %*
exit /b %errorlevel%
