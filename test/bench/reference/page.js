const typed = document.querySelector('#typed');
const said = document.querySelector('#said');
typed.addEventListener('input', () => {
  said.textContent = typed.value;
});
