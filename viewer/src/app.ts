import './views/evenhem-app.ts'
